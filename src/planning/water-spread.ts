import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * How far the wettest of several batches is above the driest, as a share of the driest.
 *
 * @example
 * ```ts
 * waterSpread({ driest: 0.2, wettest: 0.204 }).spread.toString(); // "2 %"
 * ```
 */
export const waterSpread = /* @__PURE__ */ calculation({
  id: "planning.water-spread",
  title: "Spread of the water of batches",
  given: {
    driest: { is: "ratio", symbol: "r_l", says: "least water to dry mix of the batches, by mass", above: 0 },
    wettest: { is: "ratio", symbol: "r_h", says: "most water to dry mix of the batches, by mass", above: 0 },
  },
  steps: {
    spread: { is: "ratio", unit: "%", symbol: "s", says: "wettest over driest, as a share of the driest", formula: "(wettest - driest) / driest", basis: arithmetic, atLeast: 0 },
  },
});
