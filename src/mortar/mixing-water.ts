import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { waterWeight } from "../data/mortar.js";

/**
 * Water for a weighed part of a bag, or for several bags: what to pour first, what to hold back, and the most there may
 * be, from the low and the high figure on the bag.
 *
 * @example
 * ```ts
 * const water = mixingWater({ dryMass: "20 lb", bagMass: "50 lb", waterLow: "5 qt", waterHigh: "6 qt" });
 * water.firstPour.toString(); // "2 qt"
 * water.most.toString(); // "2.4 qt"
 * ```
 */
export const mixingWater = /* @__PURE__ */ calculation({
  id: "mortar.mixing-water",
  title: "Mixing water for any part of a bag",
  given: {
    dryMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "dry mix in the pail, weighed", above: 0 },
    bagMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_b", says: "dry mix in a full bag", above: 0 },
    waterLow: { is: "volume", unit: ["qt", "L"], symbol: "W_l", says: "least water for a full bag, from the bag", above: 0 },
    waterHigh: { is: "volume", unit: ["qt", "L"], symbol: "W_h", says: "most water for a full bag, from the bag", above: 0 },
  },
  constants: {
    waterDensity: { is: "density", unit: ["lb/gal", "kg/L"], symbol: "r_w", says: "mass of water per volume", value: "1 kg/L", basis: waterWeight },
  },
  steps: {
    bags: { is: "ratio", symbol: "n", says: "bags in the pail, by mass", formula: "dryMass / bagMass", basis: arithmetic },
    firstPour: { is: "volume", unit: ["qt", "L"], symbol: "W_1", says: "water to pour first", formula: "waterLow * bags", basis: arithmetic },
    most: { is: "volume", unit: ["qt", "L"], symbol: "W_m", says: "most water there may be in the pail", formula: "waterHigh * bags", basis: arithmetic },
    holdBack: { is: "volume", unit: ["qt", "L"], symbol: "W_2", says: "water to hold back and add only as needed; below nought the low figure is above the high one", formula: "most - firstPour", basis: arithmetic, atLeast: 0 },
    ratioLow: { is: "ratio", symbol: "r_l", says: "least water to dry mix, by mass", formula: "waterLow * waterDensity / bagMass", basis: arithmetic },
    ratioHigh: { is: "ratio", symbol: "r_h", says: "most water to dry mix, by mass", formula: "waterHigh * waterDensity / bagMass", basis: arithmetic },
  },
  cautions: [
    "Weigh the dry mix: by eye or by the scoop the water is out by a fifth.",
    "Water over the high figure costs strength and bond and makes the mortar shrink; throw a drowned batch away.",
    "Wet mortar burns skin and eyes, and its dust harms the lungs: wear gloves, glasses and a mask.",
  ],
});
