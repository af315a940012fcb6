import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Whole lots, pallets or boxes for an area, by what one of them covers.
 *
 * @example
 * ```ts
 * const south = lotsForArea({ area: "1180 ft2", waste: "5 %", lotCover: "40 ft2" });
 * south.net.toString(); // "30.975"
 * south.lots.toString(); // "31"
 * ```
 */
export const lotsForArea = /* @__PURE__ */ calculation({
  id: "layout.lots-for-area",
  title: "Whole lots for an area",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "stone face to be covered, openings out", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "units broken, cut off and sorted out, on top of the net", atLeast: 0, below: 1 },
    lotCover: { is: "area", unit: ["ft2", "m2"], symbol: "A_1", says: "face that one lot covers: a box, a crate or a pallet", above: 0 },
  },
  steps: {
    withWaste: { is: "area", unit: ["ft2", "m2"], symbol: "A_w", says: "face with waste", formula: "area * (1 + waste)", basis: arithmetic },
    net: { is: "count", symbol: "n", says: "lots before rounding", formula: "withWaste / lotCover", basis: arithmetic },
    lots: { is: "count", symbol: "N", says: "whole lots", formula: "ceil(net)", basis: arithmetic },
  },
});
