import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { usualJoint } from "../data/joints.js";

/**
 * Flat units to order for a face, less what its corner units cover.
 *
 * @example
 * ```ts
 * const flats = unitsForFace({ area: "320 ft2", cornerCover: "20 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", waste: "10 %", packCount: 24 });
 * flats.net.toString(); // "900"
 * flats.toOrder.toString(); // "990"
 * flats.packs.toString(); // "42"
 * ```
 */
export const unitsForFace = /* @__PURE__ */ calculation({
  id: "layout.units-for-face",
  title: "Flat units for a face",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "whole stone face, openings out", above: 0 },
    cornerCover: { is: "area", unit: ["ft2", "m2"], symbol: "A_c", says: "what corner units cover of this face; nought where there are none", atLeast: 0 },
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "L", says: "actual face length of one unit", above: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    headJoint: { is: "length", unit: ["in", "mm"], symbol: "t_h", says: "width of the upright joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "units broken, cut off and sorted out, on top of the net", atLeast: 0, below: 1 },
    packCount: { is: "count", symbol: "p", says: "flat units in a pack", atLeast: 1, whole: true },
  },
  steps: {
    flatArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_f", says: "face left for flat units", formula: "area - cornerCover", basis: geometry, atLeast: 0 },
    unitsPerArea: { is: "countPerArea", unit: ["/ft2", "/m2"], symbol: "N", formula: "1 / ((unitLength + headJoint) * (unitHeight + bedJoint))", basis: geometry },
    net: { is: "count", symbol: "n", says: "units in the wall, before rounding", formula: "flatArea * unitsPerArea", basis: arithmetic },
    withWaste: { is: "count", symbol: "n_w", says: "units with waste, before rounding", formula: "net * (1 + waste)", basis: arithmetic },
    toOrder: { is: "count", symbol: "n_o", says: "whole units to order", formula: "ceil(withWaste)", basis: arithmetic },
    packs: { is: "count", symbol: "b", says: "whole packs to order", formula: "ceil(withWaste / packCount)", basis: arithmetic },
  },
  cautions: ["Take the actual size of the unit: the nominal size has a joint in it already."],
});
