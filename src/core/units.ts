import type { DimensionName } from "./dimensions.js";
import { type SpellingOf, symbols, type System, type UnitCode, type UnitOf, units, type UnitTexts } from "./unit-table.js";

export type { SpellingOf, System, UnitCode, UnitOf };
export { units };

/** A unit with everything the table says of it. */
export interface Unit {
  readonly code: UnitCode;
  readonly of: DimensionName;
  readonly system: System | "both";
  readonly is: string;
  readonly spellings: readonly string[];
}

/** The table as rows, in its order; read at first use, since an import shall be quick. */
let rows: ReadonlyMap<string, Unit> | undefined;

function allRows(): ReadonlyMap<string, Unit> {
  if (rows !== undefined) return rows;
  const read = new Map<string, Unit>();
  for (const of of Object.keys(units) as DimensionName[]) {
    for (const [system, group] of Object.entries(units[of]) as [System, Readonly<Record<UnitCode, UnitTexts>>][]) {
      for (const [code, [is = "", ...spellings]] of Object.entries(group) as [UnitCode, UnitTexts][]) read.set(code, { code, of, system, is, spellings });
    }
  }
  return (rows = read);
}

/** The dimension of a unit. */
export function unitDimension(code: UnitCode): DimensionName {
  return row(code).of;
}

/** The system a unit belongs to; `both` for those that all readers use. */
export function unitSystem(code: UnitCode): System | "both" {
  return row(code).system;
}

/** All units, in the order of the table. */
export function allUnits(): Iterable<Unit> {
  return allRows().values();
}

/** What the table says of a code, if it is one. */
export function findRow(code: string): Unit | undefined {
  return allRows().get(code);
}

function row(code: UnitCode): Unit {
  return allRows().get(code) as Unit;
}

/**
 * How a unit is written after a number: a bare ratio and a count have no symbol.
 *
 * @example
 * ```ts
 * unitSymbol("degFDifference"); // "degF"
 * ```
 */
export function unitSymbol(code: UnitCode): string {
  return symbols[code] ?? code;
}

/** One part of what a unit is made of: `/ft3` is foot to the power of -3. */
export interface UnitPart {
  readonly name: string;
  readonly power: number;
}

/** The parts of a product of units: `lb/ft3` as pound to the 1 and foot to the -3. */
export function unitParts(product: string): readonly UnitPart[] {
  return [...product.matchAll(/([*/]?) *([^ */]+)/g)].map(([, operator, word = ""]) => {
    const [, name = word, power = "1"] = /^(\D+)(\d)$/.exec(word) ?? [];
    return { name, power: operator === "/" ? -Number(power) : Number(power) };
  });
}

/** What a unit stands for as a quotient of others: `psf` for lbf/ft2, `/ft2` for itself; nothing for a simple one. */
export function unitQuotient(code: UnitCode): string | undefined {
  const { is } = row(code);
  if (/^[a-z]+\/[a-z]+\d$/i.test(is)) return is;
  return is === "" && /\d$|\//.test(code) ? code : undefined;
}

/**
 * The codes of the units of a dimension, in the order of the table.
 *
 * @example
 * ```ts
 * unitsOf("density"); // ["lb/ft3", "lb/gal", "kg/m3", "kg/L"]
 * ```
 */
export function unitsOf<D extends DimensionName>(dimension: D): readonly UnitOf<D>[] {
  return Object.values<object>(units[dimension]).flatMap((group) => Object.keys(group)) as UnitOf<D>[];
}

const spellings = new Map<DimensionName, ReadonlyMap<string, UnitCode>>();

/** The spellings of a dimension, as written and, where no other unit claims them, in small letters. */
function spellingsOf(dimension: DimensionName): ReadonlyMap<string, UnitCode> {
  const known = spellings.get(dimension);
  if (known !== undefined) return known;
  const all = unitsOf(dimension).flatMap((code) => [code, unitSymbol(code), ...row(code).spellings].map((text) => [text, code] as const));
  const found = new Map([...all.map(([text, code]) => [text.toLowerCase(), code] as const).reverse(), ...all]);
  spellings.set(dimension, found);
  return found;
}

/** `ft²`, `ft^2`, `sq. ft.`, `square feet`, `square feet per gallon`, `meters` → `ft2`, `ft2`, `ft2`, `ft2`, `ft2/gal`, `metres`. */
function plainSpelling(text: string): string {
  return text
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replaceAll(".", " ")
    .replaceAll("^", "")
    .replace(/(met|lit)er/gi, "$1re")
    .replace(/\bhrs?\b/gi, "h")
    .replace(/\bdeg(?:rees?)? (f|c)\w*/gi, "deg$1")
    .replace(/ {0,9}(?:\/|\bper\b) {0,9}/g, "/")
    .replace(/ +/g, " ")
    .trim()
    .replace(/\b(sq|square|cu|cubic) ([a-z]+)/gi, (all, power: string, name: string) => {
      const length = findUnit("length", name);
      return length === undefined ? all : `${length}${/^s/i.test(power) ? "2" : "3"}`;
    })
    .split("/")
    .map((part, _, { length }) => (length === 1 || length > 4 ? part : partSymbol(part)))
    .join("/");
}

/** What the parts of a quotient may be: `pounds/ft3` is `lb/ft3`. */
const partDimensions = ["length", "area", "volume", "mass", "time", "force", "temperatureDifference"] as const satisfies readonly DimensionName[];

function partSymbol(part: string): string {
  const code = partDimensions.map((dimension) => findUnit(dimension, part)).find((found) => found !== undefined);
  return code === undefined ? part : unitSymbol(code);
}

/** No spelling of a unit is longer. */
const longest = 60;

/** The unit of a dimension that a text spells, or nothing. */
export function findUnit<D extends DimensionName>(dimension: D, text: string): UnitOf<D> | undefined {
  if (text.length > longest) return undefined;
  const known = spellingsOf(dimension);
  const code = known.get(text);
  if (code !== undefined) return code as UnitOf<D>;
  const plain = plainSpelling(text);
  return (known.get(plain) ?? known.get(plain.toLowerCase())) as UnitOf<D> | undefined;
}

/** The dimensions in which a text spells a unit; to say of `3/4 gal` that it is a volume. */
export function dimensionsSpelt(text: string): readonly DimensionName[] {
  return (Object.keys(units) as DimensionName[]).filter((dimension) => findUnit(dimension, text) !== undefined);
}

