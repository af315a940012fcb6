import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Pieces kept for repairs, of the same lot, in whole packs of their own. Common practice is one or two in a hundred.
 *
 * @example
 * ```ts
 * spareUnits({ pieces: 1050, spareShare: "2 %", packCount: 12 }).packs.toString(); // "2"
 * ```
 */
export const spareUnits = /* @__PURE__ */ calculation({
  id: "takeoff.spare-units",
  title: "Spare stock",
  given: {
    pieces: { is: "count", symbol: "n", says: "pieces in the wall, before rounding", above: 0 },
    spareShare: { is: "ratio", unit: "%", symbol: "s", says: "spare stock, on top of the net", above: 0, below: 1 },
    packCount: { is: "count", symbol: "p", says: "pieces in a pack; 1 where there are no packs", atLeast: 1, whole: true },
  },
  steps: {
    spare: { is: "count", symbol: "n_s", says: "spare pieces, before rounding", formula: "pieces * spareShare", basis: arithmetic },
    toOrder: { is: "count", symbol: "n_o", says: "whole spare pieces", formula: "ceil(spare)", basis: arithmetic },
    packs: { is: "count", symbol: "b", says: "whole packs of spare pieces", formula: "ceil(spare / packCount)", basis: arithmetic },
  },
});
