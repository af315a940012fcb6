import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area, top edge and perimeter of a wall with upright sides of two heights: under a shed roof, along a stair or a grade.
 *
 * @example
 * ```ts
 * const shed = trapezoid({ width: "12 ft", leftHeight: "8 ft", rightHeight: "13 ft" });
 * shed.area.toString(); // "126 ft2"
 * shed.top.toString(); // "13 ft"
 * ```
 */
export const trapezoid = /* @__PURE__ */ calculation({
  id: "shapes.trapezoid",
  title: "Trapezoid with upright sides",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "level width", above: 0 },
    leftHeight: { is: "length", unit: ["ft", "m"], symbol: "h_l", says: "height at the left", atLeast: 0 },
    rightHeight: { is: "length", unit: ["ft", "m"], symbol: "h_r", says: "height at the right", atLeast: 0 },
  },
  steps: {
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the higher side", formula: "max(leftHeight, rightHeight)", basis: geometry },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * (leftHeight + rightHeight) / 2", basis: geometry, above: 0 },
    top: { is: "length", unit: ["ft", "m"], symbol: "t", says: "length of the sloping top", formula: "sqrt(width ^ 2 + (rightHeight - leftHeight) ^ 2)", basis: geometry },
    perimeter: { is: "length", unit: ["ft", "m"], symbol: "p", formula: "width + leftHeight + rightHeight + top", basis: geometry },
  },
});
