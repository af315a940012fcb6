import { amountArithmetic } from "../core/open-amount.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";

/** How often one quantity goes into another of its dimension, exactly; the other is not nought. */
export function howOften(whole: Quantity, one: Quantity): Quantity<"ratio"> {
  return makeQuantity("ratio", amountArithmetic.divide(amountOf(whole), amountOf(one)), "ratio");
}
