import configureMeasurements from "convert-units";
import { type Amount, exact, exactArithmetic as arithmetic, isZero, readDigits } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import { parseFormula } from "./formula.js";
import { evaluate } from "./program.js";
import { zeros } from "./unit-table.js";
import { allUnits, findRow, type UnitCode, unitDimension } from "./units.js";

const one = exact(1n);

/** Size of a unit in base units of the International System, worked out from what the table says it is: a formula of units. */
function sizeOf(name: string): Amount {
  const { is = "" } = findRow(name) ?? {};
  // A base unit is equal to nothing but itself.
  if (is === "" && /^[a-z]+$/i.test(name)) return one;
  const formula = (is === "" ? name : is).replace(/^\//, "1/").replace(/([a-z])(\d)/g, "$1^$2");
  return evaluate(parseFormula(formula), { get: sizeOf }, arithmetic);
}

/** Our arithmetic as convert-units asks for it; every number it is handed is an amount already. */
const wrapper = {
  create: (amount: unknown) => amount as Amount,
  add: arithmetic.add,
  sub: arithmetic.subtract,
  mul: arithmetic.multiply,
  div: arithmetic.divide,
  lt: (a: Amount, b: Amount) => arithmetic.compare(a, b) < 0,
  lte: (a: Amount, b: Amount) => arithmetic.compare(a, b) <= 0,
  gt: (a: Amount, b: Amount) => arithmetic.compare(a, b) > 0,
  gte: (a: Amount, b: Amount) => arithmetic.compare(a, b) >= 0,
};

type Measures = Parameters<typeof configureMeasurements>[0];

/** The nameless unit of a dimension in which the engine counts: size 1, zero at 0. */
const baseOf = (dimension: DimensionName): string => `base of ${dimension}`;

/** Our table as measures of convert-units: each dimension is one system, anchored to its base unit. */
function measures(): Measures {
  const table: Record<string, { systems: { all: Record<string, object> } }> = {};
  for (const { code, of } of allUnits()) {
    const { all } = (table[of] ??= { systems: { all: { [baseOf(of)]: { to_anchor: one } } } }).systems;
    const zero = zeros[code];
    all[code] = { to_anchor: sizeOf(code), anchor_shift: zero === undefined ? undefined : readDigits(zero).neg() };
  }
  // It takes factors as numbers and texts, and hands them to the wrapper as they stand: so exact amounts go through unchanged.
  return table as unknown as Measures;
}

let configured: ReturnType<typeof configureMeasurements<string, string, string, Amount>> | undefined;

function inBaseUnit(amount: Amount, unit: UnitCode): Amount {
  configured ??= configureMeasurements<string, string, string, Amount>(measures(), wrapper);
  return configured(amount as unknown as number).from(unit).to(baseOf(unitDimension(unit)));
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
  const zero = inBaseUnit(exact(0n), code);
  const scale = { size: arithmetic.subtract(inBaseUnit(one, code), zero), zero };
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
