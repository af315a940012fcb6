import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * A tax or an allowance on a sum of lines, rounded once to the smallest amount of the currency, halves up.
 *
 * @example
 * ```ts
 * shareOfPrice({ lines: 4210.45, share: "8.25 %", smallest: 0.01 }).amount.toString(); // "347.36"
 * ```
 */
export const shareOfPrice = /* @__PURE__ */ calculation({
  id: "takeoff.share-of-price",
  title: "Tax or allowance on a sum",
  given: {
    lines: { is: "ratio", symbol: "P", says: "lines together, in the currency of the list", atLeast: 0 },
    share: { is: "ratio", unit: "%", symbol: "s", says: "share of it that comes on top", atLeast: 0 },
    smallest: { is: "ratio", symbol: "c", says: "smallest amount of the currency, such as 0.01", above: 0 },
  },
  steps: {
    unrounded: { is: "ratio", symbol: "A_u", says: "amount before rounding", formula: "lines * share", basis: arithmetic },
    amount: { is: "ratio", symbol: "A", says: "amount, rounded once", formula: "round(unrounded / smallest) * smallest", basis: arithmetic },
  },
});
