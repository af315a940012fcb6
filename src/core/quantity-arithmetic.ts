import { type Amount, exact, isZero } from "./amount.js";
import type { DimensionName } from "./dimensions.js";
import { amountArithmetic as arithmetic } from "./open-amount.js";
import { amountOf, makeQuantity, type Quantity } from "./quantity.js";

/** What can be added: anything but a point on a temperature scale. */
export type Additive = Exclude<DimensionName, "temperature">;

/** The amount of a quantity that goes with others of a dimension; the types alone take a length beside an area. */
function amountAs(dimension: DimensionName, quantity: Quantity): Amount {
  if (quantity.dimension !== dimension) throw new RangeError(`${quantity.dimension} does not go with ${dimension}`);
  return amountOf(quantity);
}

/** The same for what is added: a temperature is a point on a scale. */
function amountToAdd(dimension: DimensionName, quantity: Quantity): Amount {
  if (dimension === "temperature") throw new RangeError("a temperature is a point on a scale; add and subtract temperature differences");
  return amountAs(dimension, quantity);
}

/**
 * Adds quantities of one dimension, exactly; the sum is shown in the unit of the first.
 *
 * @throws RangeError if there is nothing to add, or what does not go together
 * @example
 * ```ts
 * sum([quantity("area", "120 ft2"), quantity("area", "32 ft2")]).toString(); // "152 ft2"
 * ```
 */
export function sum<D extends Additive>(quantities: readonly Quantity<D>[]): Quantity<D> {
  const [first] = quantities;
  if (first === undefined) throw new RangeError("there is nothing to add");
  const amount = quantities.map((one) => amountToAdd(first.dimension, one)).reduce(arithmetic.add);
  return makeQuantity(first.dimension, amount, first.unit);
}

/**
 * Takes one quantity from another of its dimension, exactly.
 *
 * @throws RangeError if the two do not go together
 * @example
 * ```ts
 * subtract(quantity("area", "120 ft2"), quantity("area", "21 ft2")).toString(); // "99 ft2"
 * ```
 */
export function subtract<D extends Additive>(from: Quantity<D>, taken: Quantity<D>): Quantity<D> {
  const { dimension } = from;
  return makeQuantity(dimension, arithmetic.subtract(amountToAdd(dimension, from), amountToAdd(dimension, taken)), from.unit);
}

/**
 * A quantity times a whole number or a count, exactly.
 *
 * @throws RangeError if the number is not whole, or the quantity is a temperature
 * @example
 * ```ts
 * times(quantity("length", "3-5/8 in"), 3).toString(); // "10.875 in"
 * times(quantity("length", "3-5/8 in"), quantity("count", 3)).toString(); // "10.875 in"
 * ```
 */
export function times<D extends Additive>(quantity: Quantity<D>, by: number | Quantity<"count">): Quantity<D> {
  const { dimension } = quantity;
  const factor = typeof by === "number" ? exact(BigInt(by)) : amountAs("count", by);
  return makeQuantity(dimension, arithmetic.multiply(amountToAdd(dimension, quantity), factor), quantity.unit);
}

/**
 * Which of two quantities is more: above 0 where the first is, below 0 where the second is, 0 where they are equal.
 *
 * @throws RangeError if the two are not of one dimension
 * @example
 * ```ts
 * compare(quantity("length", "1 ft"), quantity("length", "12 in")); // 0
 * ```
 */
export function compare<D extends DimensionName>(a: Quantity<D>, b: Quantity<D>): number {
  return arithmetic.compare(amountOf(a), amountAs(a.dimension, b));
}

/**
 * Whether a quantity is nought.
 *
 * @example
 * ```ts
 * isNought(quantity("length", "0 in")); // true
 * ```
 */
export function isNought(quantity: Quantity): boolean {
  return isZero(amountOf(quantity));
}

/** Whether a quantity is a whole number of its base unit. */
export function isWhole(quantity: Quantity): boolean {
  const amount = amountOf(quantity);
  return arithmetic.compare(amount, arithmetic.floor(amount)) === 0;
}
