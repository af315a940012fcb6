import { exact, isExact, readDigits } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";
import { unitSystem } from "../core/units.js";

/** A length in base units as an exact fraction; one that comes from a root is taken with all the digits it has. */
export function exactLength(length: Quantity<"length">): Fraction {
  const amount = amountOf(length);
  return isExact(amount) ? amount : readDigits(amount.toFixed());
}

/** No length at all. */
export const nought: Fraction = exact(0n);

/** Makes quantities from fractions in base units, shown as the length they go with is: metric or of the United States. */
export interface Shown {
  /** A size or a position: inches or millimetres. */
  readonly length: (amount: Fraction) => Quantity<"length">;
  /** A length added up: feet or metres. */
  readonly run: (amount: Fraction) => Quantity<"length">;
  readonly area: (amount: Fraction) => Quantity<"area">;
  readonly count: (amount: number) => Quantity<"count">;
}

/** How answers are shown beside an input. */
export function shownLike({ unit }: Quantity<"length">): Shown {
  const metric = unitSystem(unit) === "si";
  return {
    length: (amount) => makeQuantity("length", amount, metric ? "mm" : "in"),
    run: (amount) => makeQuantity("length", amount, metric ? "m" : "ft"),
    area: (amount) => makeQuantity("area", amount, metric ? "m2" : "ft2"),
    count: (amount) => makeQuantity("count", exact(BigInt(amount)), "count"),
  };
}
