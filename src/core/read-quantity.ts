import { type Decimal, Decimal as OurDecimal, exact, readDigits } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import type { Fraction } from "./fraction.js";
import { plainNumber } from "./plain-number.js";
import { InputError, type Path, problem, shown, type Trouble } from "./problems.js";
import { isQuantity, makeQuantity, type Quantity } from "./quantity.js";
import { toBase } from "./unit-scale.js";
import type { Wanted } from "./wording.js";
import { dimensionsSpelt, findUnit, type SpellingOf, type UnitCode, unitsOf, unitSymbol } from "./units.js";

/** A number as people write it: `12`, `1.5e3`, `3/8`, `1-5/8`, `1 5/8`. */
type Numeral = `${number}` | `${number}/${number}` | `${number}-${number}/${number}` | `${number} ${number}/${number}`;

/** Feet and inches: `5 ft 6-3/8 in`, `5' 6-3/8"`, `5'`, `6-3/8"`. */
type FeetInches = `${number} ft ${Numeral} in` | `${number}' ${Numeral}"` | `${number}'-${Numeral}"` | `${Numeral}'` | `${Numeral}"`;

/** The texts that the compiler takes for a dimension; `.try` reads more. */
export type QuantityText<D extends DimensionName> =
  | `${Numeral} ${SpellingOf<D>}`
  | (D extends "length" ? FeetInches : D extends "count" | "ratio" ? Numeral | `${number}%` : never);

/** What is read as a quantity: a text with its unit, `{ value, unit }`, a quantity; a bare number for a ratio or a count. */
export type Readable<D extends DimensionName> =
  | QuantityText<D>
  | Quantity<D>
  | { readonly value: number | string | Decimal; readonly unit: SpellingOf<D> }
  | (D extends "count" | "ratio" ? number : never);

const longest = 80;
/** A quantity writes its exact value, and reads it back: a fraction of 4,096 bits above and below has this many digits. */
const longestExact = 2500;
const largestExponent = 30;

/** What is known of the place where a quantity is read: where it is, what it is, which units to propose. */
export interface Place {
  readonly path: Path;
  readonly says?: string | undefined;
  readonly propose?: readonly string[] | undefined;
}

/** What is wrong with what was given; `given` where that is said in other words than its own. */
type Fault = Pick<Trouble, "code" | "found"> & { readonly given?: string };

/** Reads a quantity, or says what is wrong. */
export function readQuantity<D extends DimensionName>(dimension: D, given: unknown, place: Place): Quantity<D> | Trouble {
  const read = readGiven(dimension, given);
  return "code" in read ? { given: shown(given), wanted: howToWrite(dimension, place.propose), ...read, path: place.path, says: place.says } : read;
}

/**
 * Makes a quantity from what people write.
 *
 * @param dimension - the dimension by name
 * @param given - a text with its unit, `{ value, unit }`, or a bare number for a ratio or a count
 * @returns the quantity, exact to the last digit given
 * @throws {@link InputError} saying what was given and how to write it
 * @example
 * ```ts
 * quantity("length", "5 ft 6-3/8 in").to("in").toString(); // "66.375"
 * quantity("ratio", "55 %").to().toString(); // "55"
 * ```
 */
export function quantity<D extends DimensionName>(dimension: D, given: Readable<NoInfer<D>>): Quantity<D> {
  const read = readQuantity(dimension, given, { path: [] });
  if ("code" in read) throw new InputError(`quantity of ${dimension}`, [problem(read)]);
  return read;
}

function readGiven<D extends DimensionName>(dimension: D, given: unknown): Quantity<D> | Fault {
  if (typeof given === "string") return readText(dimension, given, longest);
  if (typeof given === "number") return readText(dimension, String(given), longest);
  if (isQuantity(given)) return isOf(dimension, given) ? given : { code: "wrongDimension", given: given.toString(), found: given.dimension };
  const written = writtenBy(dimension, given);
  if (typeof written !== "object" || written === null || !("value" in written && "unit" in written)) return { code: "wrongKind" };
  const { value, unit } = written;
  if (typeof unit !== "string") return { code: "noUnit" };
  if (typeof value !== "string" && typeof value !== "number" && !OurDecimal.isDecimal(value)) return { code: "wrongKind" };
  const text = `${String(value)} ${unit}`;
  const read = readText(dimension, text, longestExact);
  return "code" in read ? { given: shown(text), ...read } : read;
}

function isOf<D extends DimensionName>(dimension: D, given: Quantity): given is Quantity<D> {
  return given.dimension === dimension;
}

/** What a quantity of another copy of the package writes of itself; anything else as it is. */
function writtenBy(dimension: DimensionName, given: unknown): unknown {
  const writes = given as Partial<Quantity> | null | undefined;
  return writes?.dimension === dimension && typeof writes.toJSON === "function" ? writes.toJSON() : given;
}

const startsWithComma = /^[+-]?\d+,\d/;
const startsWithNumber = /^[+-]?((\d+[- ])?\d+\/\d+|(\d+\.?\d*|\.\d+)(e[+-]?\d+)?)/i;
/** Feet, and the inches after them. */
const feetInches = /^([+-]?\d+(?:\.\d+)?) ?(?:ft|foot|feet|'|′)[ -]?([^'′]*\d[^'′]*(?:in|inch|inches|"|″))$/;

function readText<D extends DimensionName>(dimension: D, given: string, mostLetters: number): Quantity<D> | Fault {
  if (given.length > mostLetters) return { code: "tooLong" };
  const plain = plainNumber(given);
  if (plain !== undefined) {
    const code = unitNamed(dimension, given.slice(plain.end));
    if (code !== undefined) return makeQuantity(dimension, toBase(plain.number, code), code);
  }
  const text = asTyped(given).replace(/\s+/g, " ").trim();
  if (text === "") return { code: "empty" };
  if (startsWithComma.test(text)) return { code: "comma" };
  if (/^[+-]?(nan|infinity)/i.test(text)) return { code: "notFinite" };
  const [, feet, inches = text] = dimension === "length" ? (feetInches.exec(text) ?? []) : [];
  const [digits] = startsWithNumber.exec(inches) ?? [];
  if (digits === undefined || /\/0+$/.test(digits) || (feet !== undefined && inches.startsWith("-"))) return { code: "notANumber" };
  if (Math.abs(Number(/e(.*)/i.exec(digits)?.[1] ?? 0)) > largestExponent) return { code: "tooLarge" };
  const number = readDigits(digits.replace(/(\d)-/, "$1 "));
  const unit = inches.slice(digits.length).trim();
  const code = unitNamed(dimension, unit);
  if (code !== undefined) return makeQuantity(dimension, toBase(feet === undefined ? number : inInches(feet, number), code), code);
  if (unit === "") return { code: "noUnit" };
  if (/^[-/\d.,]/.test(unit) && !/^\/[a-z°]/i.test(unit)) return { code: "notANumber" };
  const [other] = dimensionsSpelt(unit);
  return other === undefined ? { code: "unknownUnit" } : { code: "wrongDimension", found: other };
}

/** What a telephone makes of signs, made plain again: `1’ 2½”` as `1' 2 1/2"`. */
function asTyped(text: string): string {
  const signs = text.replaceAll("−", "-").replaceAll("’", "'").replaceAll("”", '"');
  return signs.replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize("NFKC").replace("⁄", "/")}`);
}

/** A ratio and a count may stand without a unit. */
function unitNamed(dimension: DimensionName, unit: string): UnitCode | undefined {
  return unit === "" && (dimension === "ratio" || dimension === "count") ? dimension : findUnit(dimension, unit);
}

/** Feet and inches in inches; a minus before the feet is meant for both. */
function inInches(feet: string, inches: Fraction): Fraction {
  const whole = readDigits(feet).mul(exact(12n));
  return feet.startsWith("-") ? whole.sub(inches) : whole.add(inches);
}

/** How a quantity is written: the units to propose, and others up to so many. */
export function howToWrite(dimension: DimensionName, propose: readonly string[] = [], most = 6): Wanted {
  if (dimension === "count") return { kind: "number" };
  if (dimension === "ratio") return { kind: "share" };
  return { kind: "units", of: [...new Set([...propose, ...unitsOf(dimension).map(unitSymbol)])].slice(0, most) };
}
