import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area, jambs and perimeter of an opening under an arch, from the area and the length of its arch.
 *
 * @example
 * ```ts
 * const window = archedOpening({ width: "3 ft", height: "4 ft", archArea: "2.1 ft2", arc: "3.7 ft" });
 * window.area.toString(); // "14.1 ft2"
 * window.perimeter.toString(); // "14.7 ft"
 * ```
 */
export const archedOpening = /* @__PURE__ */ calculation({
  id: "shapes.arched-opening",
  title: "Arched opening",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "width of the opening", above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the jambs, from sill to springing", atLeast: 0 },
    archArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_b", says: "area between springing and arch", above: 0 },
    arc: { is: "length", unit: ["ft", "m"], symbol: "b", says: "length of the arch", above: 0 },
  },
  steps: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * height + archArea", basis: geometry },
    jambs: { is: "length", unit: ["ft", "m"], symbol: "j", says: "both jambs together", formula: "2 * height", basis: geometry },
    perimeter: { is: "length", unit: ["ft", "m"], symbol: "p", formula: "width + jambs + arc", basis: geometry },
  },
});
