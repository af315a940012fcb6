import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { waterWeight } from "../data/mortar.js";

/**
 * Water to dry mix by mass in a batch that was mixed.
 *
 * @example
 * ```ts
 * waterRatio({ dryMass: "25 kg", water: "5.5 L" }).waterRatio.toString(); // "0.22"
 * ```
 */
export const waterRatio = /* @__PURE__ */ calculation({
  id: "planning.water-ratio",
  title: "Water to dry mix in a batch",
  given: {
    dryMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "dry mix in the batch, weighed", above: 0 },
    water: { is: "volume", unit: ["qt", "L"], symbol: "W", says: "all water that went into the batch", atLeast: 0 },
  },
  constants: {
    waterDensity: { is: "density", unit: ["lb/gal", "kg/L"], symbol: "r_w", says: "mass of water per volume", value: "1 kg/L", basis: waterWeight },
  },
  steps: {
    waterRatio: { is: "ratio", symbol: "r", says: "water to dry mix, by mass", formula: "water * waterDensity / dryMass", basis: arithmetic },
  },
});
