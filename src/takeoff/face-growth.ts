import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * How much larger the stone face is than the backing: at each outside corner the stone stands before the backing by its
 * thickness and its bed, on each face that meets there.
 *
 * @example
 * ```ts
 * faceGrowth({ edgeFaces: "36 ft", unitThickness: "1-1/2 in", bed: "1/2 in" }).growth.toString(); // "6 ft2"
 * ```
 */
export const faceGrowth = /* @__PURE__ */ calculation({
  id: "takeoff.face-growth",
  title: "Stone face beyond the backing at outside corners",
  given: {
    edgeFaces: { is: "length", unit: ["ft", "m"], symbol: "e", says: "outside edges, each counted once for every clad face that meets there", atLeast: 0 },
    unitThickness: { is: "length", unit: ["in", "mm"], symbol: "u", says: "mean thickness of the units at their edges", above: 0 },
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean thickness of the bed on the wall", atLeast: 0 },
  },
  steps: {
    growth: { is: "area", unit: ["ft2", "m2"], symbol: "A_g", says: "what the corners add to the stone face", formula: "edgeFaces * (unitThickness + bed)", basis: geometry },
  },
});
