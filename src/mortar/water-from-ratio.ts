import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { waterWeight } from "../data/mortar.js";

/**
 * Water for a weighed amount of dry mix where the data sheet gives it by mass: so much water to one of dry mix.
 *
 * @example
 * ```ts
 * waterFromRatio({ dryMass: "10 kg", ratioLow: 0.22, ratioHigh: 0.26 }).firstPour.toString(); // "2.2 L"
 * ```
 */
export const waterFromRatio = /* @__PURE__ */ calculation({
  id: "mortar.water-from-ratio",
  title: "Mixing water from a ratio by mass",
  given: {
    dryMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "dry mix in the pail, weighed", above: 0 },
    ratioLow: { is: "ratio", symbol: "r_l", says: "least water to dry mix by mass, from the data sheet", above: 0, atMost: 1 },
    ratioHigh: { is: "ratio", symbol: "r_h", says: "most water to dry mix by mass, from the data sheet", above: 0, atMost: 1 },
  },
  constants: {
    waterDensity: { is: "density", unit: ["lb/gal", "kg/L"], symbol: "r_w", says: "mass of water per volume", value: "1 kg/L", basis: waterWeight },
  },
  steps: {
    firstPour: { is: "volume", unit: ["qt", "L"], symbol: "W_1", says: "water to pour first", formula: "ratioLow * dryMass / waterDensity", basis: arithmetic },
    most: { is: "volume", unit: ["qt", "L"], symbol: "W_m", says: "most water there may be in the pail", formula: "ratioHigh * dryMass / waterDensity", basis: arithmetic },
    holdBack: { is: "volume", unit: ["qt", "L"], symbol: "W_2", says: "water to hold back and add only as needed; below nought the low figure is above the high one", formula: "most - firstPour", basis: arithmetic, atLeast: 0 },
  },
  cautions: ["Weigh the dry mix: by eye or by the scoop the water is out by a fifth."],
});
