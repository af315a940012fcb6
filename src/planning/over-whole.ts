import type { Quantity } from "../core/quantity.js";
import { subtract } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";

/** How far a share is over the whole; below nought where it is under it. */
export function overWhole(share: Quantity<"ratio">): Quantity<"ratio"> {
  return subtract(share, quantity("ratio", 1));
}
