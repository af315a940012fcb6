import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area, rake and perimeter of a gable: the triangle over the eaves, its peak above the middle.
 *
 * @example
 * ```ts
 * const peak = gable({ width: "24 ft", height: "5 ft" });
 * peak.area.toString(); // "60 ft2"
 * peak.rake.toString(); // "13 ft"
 * ```
 */
export const gable = /* @__PURE__ */ calculation({
  id: "shapes.gable",
  title: "Gable",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "width of the gable at the eaves", above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the peak over the eaves", above: 0 },
  },
  steps: {
    halfWidth: { is: "length", unit: ["ft", "m"], symbol: "w_h", says: "from the eaves to under the peak", formula: "width / 2", basis: geometry },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "halfWidth * height", basis: geometry },
    rake: { is: "length", unit: ["ft", "m"], symbol: "r", says: "length of one sloping edge", formula: "sqrt(halfWidth ^ 2 + height ^ 2)", basis: geometry },
    perimeter: { is: "length", unit: ["ft", "m"], symbol: "p", formula: "width + 2 * rake", basis: geometry },
  },
});
