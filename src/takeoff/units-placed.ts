import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Units that are set, flats and corners, without spare ones.
 *
 * @example
 * ```ts
 * unitsPlaced({ flats: 880.25, corners: 54 }).placed.toString(); // "935"
 * ```
 */
export const unitsPlaced = /* @__PURE__ */ calculation({
  id: "takeoff.units-placed",
  title: "Units set",
  given: {
    flats: { is: "count", symbol: "n_f", says: "flat units in the wall, before rounding", atLeast: 0 },
    corners: { is: "count", symbol: "n_c", says: "corner units in the wall, before rounding", atLeast: 0 },
  },
  steps: {
    placed: { is: "count", symbol: "n", says: "whole units that are set", formula: "ceil(flats) + ceil(corners)", basis: arithmetic },
  },
});
