import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area and circumference of a circle.
 *
 * @example
 * ```ts
 * circle({ diameter: "2 ft" }).area.toString(); // "3.141592654 ft2"
 * ```
 */
export const circle = /* @__PURE__ */ calculation({
  id: "shapes.circle",
  title: "Circle",
  given: {
    diameter: { is: "length", unit: ["ft", "m"], symbol: "d", says: "diameter of the circle", above: 0 },
  },
  steps: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "pi * diameter ^ 2 / 4", basis: geometry },
    perimeter: { is: "length", unit: ["ft", "m"], symbol: "p", formula: "pi * diameter", basis: geometry },
  },
});
