import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area and perimeter of a rectangle.
 *
 * @example
 * ```ts
 * rectangle({ width: "32 ft", height: "9 ft" }).area.toString(); // "288 ft2"
 * rectangle({ width: "32 ft", height: "9 ft" }).perimeter.toString(); // "82 ft"
 * ```
 */
export const rectangle = /* @__PURE__ */ calculation({
  id: "shapes.rectangle",
  title: "Rectangle",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "width of the rectangle", above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the rectangle", above: 0 },
  },
  steps: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * height", basis: geometry },
    perimeter: { is: "length", unit: ["ft", "m"], symbol: "p", formula: "2 * (width + height)", basis: geometry },
  },
});
