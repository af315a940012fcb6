import { Decimal, isExact, toDecimal } from "../core/amount.js";
import { amountOf, type Quantity } from "../core/quantity.js";

/** What of a value says how closely an answer must hit it. */
interface Aim {
  readonly value: Quantity;
  readonly digits: number;
}

/** Whether a value is a whole count, which is hit or missed. */
function isWhole(value: Quantity): boolean {
  const amount = amountOf(value);
  return value.dimension === "count" && isExact(amount) && amount.isWhole();
}

/** The significant digits an answer is asked with: as told, and all of a whole number. */
export function digitsOf({ value }: { readonly value: Quantity }, digits: number): number {
  return isWhole(value) ? Math.max(digits, value.to().abs().toFixed(0).length) : digits;
}

/** Whether two values of one dimension are one answer: equal where whole, else within one in the last of the digits. */
export function isSameAnswer({ value, digits }: Aim, other: Quantity): boolean {
  const inUnit = (one: Quantity): Decimal => new Decimal(one.to(value.unit).toString());
  const [aim, hit] = [inUnit(value), inUnit(other)];
  if (isWhole(value) || aim.isZero()) return aim.eq(hit);
  const last = new Decimal(10).pow(toDecimal(aim).abs().log(10).floor().minus(digits - 1));
  // The figures were rounded on both sides: what lies between them may be a shade more than one in the last place.
  return aim.minus(hit).abs().lte(last.times("1.0001"));
}
