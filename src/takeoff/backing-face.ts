import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The face of the backing that is boarded: walls without the openings, less what the stone stands before it at corners
 * where the walls were measured to the stone face.
 *
 * @example
 * ```ts
 * backingFace({ walls: "360 ft2", openings: "60 ft2", growth: "4 ft2" }).face.toString(); // "296 ft2"
 * ```
 */
export const backingFace = /* @__PURE__ */ calculation({
  id: "takeoff.backing-face",
  title: "Face of the backing",
  given: {
    walls: { is: "area", unit: ["ft2", "m2"], symbol: "A_w", says: "walls, openings in", above: 0 },
    openings: { is: "area", unit: ["ft2", "m2"], symbol: "A_o", says: "openings", atLeast: 0 },
    growth: { is: "area", unit: ["ft2", "m2"], symbol: "A_g", says: "what the corners add to the stone face; nought where it was measured to the backing", atLeast: 0 },
  },
  steps: {
    face: { is: "area", unit: ["ft2", "m2"], symbol: "A_b", says: "face of the backing, openings out", formula: "walls - openings - growth", basis: geometry, above: 0 },
  },
});
