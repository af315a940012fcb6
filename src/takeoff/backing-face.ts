import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The face of the backing that is boarded: walls without the openings, and soffits. Where the walls were measured to the
 * stone face, it is less by what the stone stands before it at outside corners, and more by what inside corners take.
 *
 * @example
 * ```ts
 * backingFace({ walls: "360 ft2", openings: "60 ft2", soffits: "12 ft2", growth: "4 ft2", loss: "0 ft2" }).face.toString(); // "308 ft2"
 * ```
 */
export const backingFace = /* @__PURE__ */ calculation({
  id: "takeoff.backing-face",
  title: "Face of the backing",
  given: {
    walls: { is: "area", unit: ["ft2", "m2"], symbol: "A_w", says: "walls, openings in", above: 0 },
    openings: { is: "area", unit: ["ft2", "m2"], symbol: "A_o", says: "openings", atLeast: 0 },
    soffits: { is: "area", unit: ["ft2", "m2"], symbol: "A_s", says: "soffits", atLeast: 0 },
    growth: { is: "area", unit: ["ft2", "m2"], symbol: "A_g", says: "what outside corners add to the stone face; nought where it was measured to the backing", atLeast: 0 },
    loss: { is: "area", unit: ["ft2", "m2"], symbol: "A_l", says: "what inside corners take from the stone face; nought where it was measured to the backing", atLeast: 0 },
  },
  steps: {
    face: { is: "area", unit: ["ft2", "m2"], symbol: "A_b", says: "face of the backing, openings out", formula: "walls - openings + soffits - growth + loss", basis: geometry, above: 0 },
  },
});
