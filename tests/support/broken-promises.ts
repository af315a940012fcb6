// What must hold of everything that the package hands back.
import { Decimal } from "decimal.js";
import { isQuantity } from "../../src/core/index.js";

/** Every number in an answer that is none, every place that is not frozen, every count to order below nought. */
export function wrongIn(value: unknown, at: string, seen = new Set<unknown>()): readonly string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [`${at} is ${String(value)}`];
  if (typeof value === "string") return /\b(NaN|Infinity|undefined|\[object)\b/.test(value) && !at.includes("name") ? [`${at} says ${value.slice(0, 80)}`] : [];
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  const frozen = Object.isFrozen(value) || Decimal.isDecimal(value) ? [] : [`${at} is not frozen`];
  if (isQuantity(value)) {
    const number = value.to();
    const odd = number.isFinite() ? [] : [`${at} is ${number.toString()}`];
    const negative = value.dimension === "count" && number.isNegative() && !number.isZero() ? [`${at} is ${value.toString()}`] : [];
    return [...frozen, ...odd, ...negative];
  }
  return [...frozen, ...Object.entries(value).flatMap(([key, one]) => (key === "formula" || key === "basis" ? [] : wrongIn(one, `${at}.${key}`, seen)))];
}
