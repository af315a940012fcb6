import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * How often the pointing bag is filled for an amount of mortar.
 *
 * @example
 * ```ts
 * pointingFills({ volume: "7.2 ft3", pointingBag: "2 qt" }).fills.toString(); // "108"
 * ```
 */
export const pointingFills = /* @__PURE__ */ calculation({
  id: "joints.pointing-fills",
  title: "Fills of a pointing bag",
  given: {
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar that goes through the bag", above: 0 },
    pointingBag: { is: "volume", unit: ["qt", "L"], symbol: "V_b", says: "mortar in one fill of the pointing bag", above: 0 },
  },
  steps: {
    fills: { is: "count", symbol: "n", says: "fills of the bag, the last one in part", formula: "ceil(volume / pointingBag)", basis: arithmetic },
  },
});
