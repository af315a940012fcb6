import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Mean water to a bag that the log proves, beside the low and the high figure on the bag.
 *
 * @example
 * ```ts
 * const water = waterFromUsage({ bagsUsed: 12, water: "66 qt", waterLow: "5 qt", waterHigh: "6 qt" });
 * water.waterPerBag.toString(); // "5.5 qt"
 * water.overHigh.toString(); // "-0.5 qt"
 * ```
 */
export const waterFromUsage = /* @__PURE__ */ calculation({
  id: "planning.water-from-usage",
  title: "Mean water to a bag from the log",
  given: {
    bagsUsed: { is: "count", symbol: "n", says: "bags mixed, parts of a bag counted", above: 0 },
    water: { is: "volume", unit: ["qt", "L"], symbol: "W", says: "all water that went into them", above: 0 },
    waterLow: { is: "volume", unit: ["qt", "L"], symbol: "W_l", says: "least water for a full bag, from the bag", above: 0 },
    waterHigh: { is: "volume", unit: ["qt", "L"], symbol: "W_h", says: "most water for a full bag, from the bag", above: 0 },
  },
  steps: {
    range: { is: "volume", unit: ["qt", "L"], symbol: "W_r", says: "between the low and the high figure", formula: "waterHigh - waterLow", basis: arithmetic, atLeast: 0 },
    waterPerBag: { is: "volume", unit: ["qt", "L"], symbol: "W_b", says: "mean water to a bag", formula: "water / bagsUsed", basis: arithmetic },
    overLow: { is: "volume", unit: ["qt", "L"], symbol: "d_l", says: "mean water over the low figure; below nought it is under it", formula: "waterPerBag - waterLow", basis: arithmetic },
    overHigh: { is: "volume", unit: ["qt", "L"], symbol: "d_h", says: "mean water over the high figure; below nought it is under it", formula: "waterPerBag - waterHigh", basis: arithmetic },
  },
  cautions: ["A mean: one drowned batch hides behind a dry one. Look at each batch of the log."],
});
