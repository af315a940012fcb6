import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Water that may still go into a pail. Where more has been poured than the high figure on the bag allows, there is no
 * answer: the batch is drowned.
 *
 * @example
 * ```ts
 * waterLeft({ dryMass: "25 lb", bagMass: "50 lb", waterHigh: "6 qt", poured: "2-1/2 qt" }).left.toString(); // "0.5 qt"
 * ```
 */
export const waterLeft = /* @__PURE__ */ calculation({
  id: "mortar.water-left",
  title: "Water that may still be added to a batch",
  given: {
    dryMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "dry mix in the pail, weighed", above: 0 },
    bagMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_b", says: "dry mix in a full bag", above: 0 },
    waterHigh: { is: "volume", unit: ["qt", "L"], symbol: "W_h", says: "most water for a full bag, from the bag", above: 0 },
    poured: { is: "volume", unit: ["qt", "L"], symbol: "W_p", says: "water poured so far", atLeast: 0 },
  },
  steps: {
    most: { is: "volume", unit: ["qt", "L"], symbol: "W_m", says: "most water there may be in the pail", formula: "waterHigh * dryMass / bagMass", basis: arithmetic },
    left: { is: "volume", unit: ["qt", "L"], symbol: "W_l", says: "water that may still be added; below nought the batch has more than the bag allows", formula: "most - poured", basis: arithmetic, atLeast: 0 },
  },
  cautions: ["Only while the batch is being mixed: once it has slaked, see mortar.may-add-water."],
});
