import { isExact, sign } from "../core/amount.js";
import type { DimensionName } from "../core/dimensions.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";
import { type System, type UnitCode, unitSystem, type UnitOf } from "../core/units.js";
import { fromBase } from "../core/unit-scale.js";
import { converter } from "./converter.js";

/**
 * The same quantity, shown in another unit.
 *
 * @example
 * ```ts
 * inUnit(quantity("length", "8 ft"), "in").toString(); // "96 in"
 * ```
 */
export function inUnit<D extends DimensionName>(given: Quantity<D>, unit: UnitOf<D>): Quantity<D> {
  return makeQuantity(given.dimension, amountOf(given), unit);
}

/**
 * The same quantity in the unit of its system in which its number is the least that is 1 or more: 0.5 ft is 6 in.
 *
 * @param given - any quantity; one with no such unit, or on a scale of temperature, stays as it is
 * @param system - the system of units; that of its own unit unless told otherwise
 * @example
 * ```ts
 * bestUnit(quantity("volume", "0.75 gal")).toString(); // "3 qt"
 * ```
 */
export function bestUnit<D extends DimensionName>(given: Quantity<D>, system?: System): Quantity<D> {
  const amount = fromBase(amountOf(given), given.unit);
  if (given.dimension === "temperature" || !isExact(amount)) return given;
  const wanted = system ?? unitSystem(given.unit);
  const best = converter(amount).from(given.unit).toBest({ system: wanted, cutOffNumber: sign(amount) || 1 });
  return best === null ? given : makeQuantity(given.dimension, amountOf(given), best.unit as UnitCode);
}
