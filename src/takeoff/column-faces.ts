import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Faces, foot and corners of a column that is clad all round.
 *
 * @example
 * ```ts
 * const pier = columnFaces({ width: "2 ft", depth: "18 in", height: "9 ft" });
 * pier.area.toString(); // "63 ft2"
 * pier.corners.toString(); // "36 ft"
 * ```
 */
export const columnFaces = /* @__PURE__ */ calculation({
  id: "takeoff.column-faces",
  title: "Faces of a column",
  given: {
    width: { is: "length", unit: ["ft", "m"], symbol: "w", says: "width of the column", above: 0 },
    depth: { is: "length", unit: ["ft", "m"], symbol: "d", says: "depth of the column", above: 0 },
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the column", above: 0 },
  },
  steps: {
    foot: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length round the column", formula: "2 * (width + depth)", basis: geometry },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "four faces together", formula: "foot * height", basis: geometry },
    corners: { is: "length", unit: ["ft", "m"], symbol: "c", says: "four outside corners together", formula: "4 * height", basis: geometry },
    outline: { is: "length", unit: ["ft", "m"], symbol: "p", says: "round each of the four faces", formula: "2 * foot + 2 * corners", basis: geometry },
  },
});
