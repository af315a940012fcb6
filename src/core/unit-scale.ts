import configureMeasurements from "convert-units";
import { type Amount, exact, exactArithmetic as arithmetic, isZero, readDigits } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import { zeros } from "./unit-table.js";
import { allUnits, findRow, type UnitCode, unitDimension, unitParts } from "./units.js";

/** Size of a unit in base units of the International System, read from what the table says it is. */
function sizeOf(name: string): Amount {
  if (name === "pi") return arithmetic.pi();
  if (/^\d/.test(name)) return readDigits(name);
  const { is = "" } = findRow(name) ?? {};
  if (is === "" && !/\d$|\//.test(name)) return exact(1n);
  return unitParts(is || name).reduce<Amount>(
    (size, part) => arithmetic.multiply(size, arithmetic.power(sizeOf(part.name), exact(BigInt(part.power)))),
    exact(1n),
  );
}

/** Reads `"45967/180"`. */
function fraction(text: string): Amount {
  const [above = "0", below = "1"] = text.split("/");
  return arithmetic.divide(readDigits(above), readDigits(below));
}

/** What convert-units asks of a number type, over our exact amounts. */
const read = (value: Amount | string | number): Amount => (typeof value === "object" ? value : readDigits(String(value)));
type Given = Amount | string | number;
const wrapper = {
  create: read,
  add: (a: Given, b: Given): Amount => arithmetic.add(read(a), read(b)),
  sub: (a: Given, b: Given): Amount => arithmetic.subtract(read(a), read(b)),
  mul: (a: Given, b: Given): Amount => arithmetic.multiply(read(a), read(b)),
  div: (a: Given, b: Given): Amount => arithmetic.divide(read(a), read(b)),
  lt: (a: Given, b: Given): boolean => arithmetic.compare(read(a), read(b)) < 0,
  lte: (a: Given, b: Given): boolean => arithmetic.compare(read(a), read(b)) <= 0,
  gt: (a: Given, b: Given): boolean => arithmetic.compare(read(a), read(b)) > 0,
  gte: (a: Given, b: Given): boolean => arithmetic.compare(read(a), read(b)) >= 0,
};

type Measures = Parameters<typeof configureMeasurements>[0];

/** The nameless unit of a dimension in which the engine counts: size 1, zero at 0. */
const baseOf = (dimension: DimensionName): string => `base of ${dimension}`;

/** Our table as measures of convert-units: every unit is anchored to the base, so systems meet it at a ratio of 1. */
function measures(): Measures {
  const table: Record<string, Measures[string]> = {};
  const same = { base: { ratio: 1 } };
  for (const { code, of, system, spellings } of allUnits()) {
    const measure = (table[of] ??= {
      systems: { base: { [baseOf(of)]: { name: { singular: "", plural: "" }, to_anchor: 1 } } },
      anchors: { us: same, si: same, both: same },
    });
    const zero = zeros[code];
    (measure.systems[system] ??= {})[code] = {
      name: { singular: spellings[0] ?? code, plural: spellings[1] ?? code },
      // convert-units hands the factor to the wrapper as it stands, so an exact amount goes through unchanged.
      to_anchor: sizeOf(code) as unknown as string,
      ...(zero === undefined ? {} : { anchor_shift: arithmetic.negate(fraction(zero)) as unknown as string }),
    };
  }
  return table;
}

let configured: ReturnType<typeof configureMeasurements<string, string, string, Amount>> | undefined;

function toBaseUnit(amount: Amount, unit: UnitCode): Amount {
  configured ??= configureMeasurements<string, string, string, Amount>(measures(), wrapper);
  // Nought is passed as text, since convert-units takes anything false for nought; NaN never reaches it.
  return configured((isZero(amount) ? "0" : amount) as unknown as number).from(unit).to(baseOf(unitDimension(unit)));
}

/** A unit's place on the scale of its base unit: `base = amount * size + zero`. */
interface Scale {
  readonly size: Amount;
  readonly zero: Amount;
}

const scales = new Map<UnitCode, Scale>();

/** The scale of a unit, asked of convert-units once and kept. */
export function unitScale(code: UnitCode): Scale {
  const known = scales.get(code);
  if (known !== undefined) return known;
  const zero = toBaseUnit(exact(0n), code);
  const scale = { size: arithmetic.subtract(toBaseUnit(exact(1n), code), zero), zero };
  scales.set(code, scale);
  return scale;
}

/** An amount in base units from an amount in a unit. */
export function toBase(amount: Amount, unit: UnitCode): Amount {
  const { size, zero } = unitScale(unit);
  const scaled = arithmetic.multiply(amount, size);
  return isZero(zero) ? scaled : arithmetic.add(scaled, zero);
}

/** An amount in a unit from an amount in base units. */
export function fromBase(amount: Amount, unit: UnitCode): Amount {
  const { size, zero } = unitScale(unit);
  return arithmetic.divide(isZero(zero) ? amount : arithmetic.subtract(amount, zero), size);
}

