import { type Amount, exact, exactArithmetic as arithmetic, isExact, isZero, readDigits } from "./amount.js";
import { parseFormula } from "./formula.js";
import { evaluate } from "./program.js";
import { zeros } from "./unit-table.js";
import { findRow, type UnitCode } from "./units.js";

const one = exact(1n);

/** Size of a unit in base units of the International System, worked out from what the table says it is: a formula of units. */
function sizeOf(name: string): Amount {
  const { is = "" } = findRow(name) ?? {};
  // A base unit is equal to nothing but itself.
  if (is === "" && /^[a-z]+$/i.test(name)) return one;
  const formula = (is === "" ? name : is).replace(/^\//, "1/").replace(/([a-z])(\d)/g, "$1^$2");
  return evaluate(parseFormula(formula), { get: sizeOf }, arithmetic);
}

/** A unit's place on the scale of its base unit: `base = amount * size + zero`. */
interface Scale {
  readonly size: Amount;
  readonly zero: Amount;
}

const scales = new Map<UnitCode, Scale>();

/** The scale of a unit, worked out from the table once and kept. */
export function unitScale(code: UnitCode): Scale {
  const known = scales.get(code);
  if (known !== undefined) return known;
  const size = sizeOf(code);
  const scale = { size: isExact(size) ? size.inLowestTerms() : size, zero: readDigits(zeros[code] ?? "0") };
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
