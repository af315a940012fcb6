import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * One edge of a polygon: its length, and the area between it and the level from which heights are measured. The area
 * counts as negative where the edge runs to the right; added up round the polygon, these give its area.
 *
 * @example
 * ```ts
 * const edge = polygonEdge({ fromX: "4 ft", fromY: "8 ft", toX: "0 ft", toY: "5 ft" });
 * edge.length.toString(); // "5 ft"
 * edge.areaUnder.toString(); // "26 ft2"
 * ```
 */
export const polygonEdge = /* @__PURE__ */ calculation({
  id: "shapes.polygon-edge",
  title: "Edge of a polygon",
  given: {
    fromX: { is: "length", unit: ["ft", "m"], symbol: "x_1", says: "how far right the edge begins" },
    fromY: { is: "length", unit: ["ft", "m"], symbol: "y_1", says: "how high the edge begins" },
    toX: { is: "length", unit: ["ft", "m"], symbol: "x_2", says: "how far right the edge ends" },
    toY: { is: "length", unit: ["ft", "m"], symbol: "y_2", says: "how high the edge ends" },
  },
  steps: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", formula: "sqrt((toX - fromX) ^ 2 + (toY - fromY) ^ 2)", basis: geometry, above: 0 },
    areaUnder: { is: "area", unit: ["ft2", "m2"], symbol: "A_e", says: "area under the edge, negative where it runs to the right", formula: "(fromX - toX) * (fromY + toY) / 2", basis: geometry },
  },
});
