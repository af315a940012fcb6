import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Corner units for all outside corners together: one a course, long and short leg turned about. They are rounded up once,
 * and what they cover comes off the flat units.
 *
 * @example
 * ```ts
 * const corners = cornerUnits({ edgeHeight: "36 ft", longLeg: "8 in", shortLeg: "4 in", courseHeight: "4 in", waste: "5 %" });
 * corners.net.toString(); // "108"
 * corners.toOrder.toString(); // "114"
 * corners.coverBothFaces.toString(); // "36 ft2"
 * ```
 */
export const cornerUnits = /* @__PURE__ */ calculation({
  id: "layout.corner-units",
  title: "Corner units",
  given: {
    edgeHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of all outside corners together", above: 0 },
    longLeg: { is: "length", unit: ["in", "mm"], symbol: "a", says: "long leg of a corner unit, measured on its face", above: 0 },
    shortLeg: { is: "length", unit: ["in", "mm"], symbol: "b", says: "short leg of a corner unit, measured on its face", above: 0 },
    courseHeight: { is: "length", unit: ["in", "mm"], symbol: "c", says: "height of a course: unit and one bed joint", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "corner units broken and cut off, on top of the net", atLeast: 0, below: 1 },
  },
  steps: {
    net: { is: "count", symbol: "n", says: "corner units in the wall, before rounding", formula: "edgeHeight / courseHeight", basis: geometry },
    withWaste: { is: "count", symbol: "n_w", says: "corner units with waste, before rounding", formula: "net * (1 + waste)", basis: arithmetic },
    toOrder: { is: "count", symbol: "n_o", says: "whole corner units to order", formula: "ceil(withWaste)", basis: arithmetic },
    pairs: { is: "count", symbol: "n_p", says: "whole pairs to order, where they come in pairs", formula: "ceil(withWaste / 2)", basis: arithmetic },
    coverBothFaces: { is: "area", unit: ["ft2", "m2"], symbol: "A_c", says: "what the corner units cover of the two faces together", formula: "edgeHeight * (longLeg + shortLeg)", basis: geometry },
    coverEachFace: { is: "area", unit: ["ft2", "m2"], symbol: "A_e", says: "what they cover of each face", formula: "coverBothFaces / 2", basis: geometry },
  },
  cautions: ["Count short edges too, at sills and returns; inside corners take no corner units."],
});
