import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Packs of corner units, from the units with waste before rounding.
 *
 * @example
 * ```ts
 * cornerPacks({ withWaste: 60.5, packCount: 12 }).packs.toString(); // "6"
 * ```
 */
export const cornerPacks = /* @__PURE__ */ calculation({
  id: "takeoff.corner-packs",
  title: "Packs of corner units",
  given: {
    withWaste: { is: "count", symbol: "n_w", says: "corner units with waste, before rounding", atLeast: 0 },
    packCount: { is: "count", symbol: "p", says: "corner units in a pack", atLeast: 1, whole: true },
  },
  steps: {
    packs: { is: "count", symbol: "b", says: "whole packs to order", formula: "ceil(withWaste / packCount)", basis: arithmetic },
  },
});
