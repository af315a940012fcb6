import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area of a place on an elevation, from its edges; openings within it are counted.
 *
 * @example
 * ```ts
 * placeArea({ left: "0 ft", right: "18 ft", bottom: "2 ft", top: "4 ft" }).area.toString(); // "36 ft2"
 * ```
 */
export const placeArea = /* @__PURE__ */ calculation({
  id: "planning.place-area",
  title: "Area of a place on an elevation",
  given: {
    left: { is: "length", unit: ["ft", "m"], symbol: "x_1", says: "left edge, from the left end of the elevation" },
    right: { is: "length", unit: ["ft", "m"], symbol: "x_2", says: "right edge, from the left end of the elevation" },
    bottom: { is: "length", unit: ["ft", "m"], symbol: "y_1", says: "lower edge, from the base line" },
    top: { is: "length", unit: ["ft", "m"], symbol: "y_2", says: "upper edge, from the base line" },
  },
  steps: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", formula: "right - left", basis: geometry, above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", formula: "top - bottom", basis: geometry, above: 0 },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * height", basis: geometry },
  },
});
