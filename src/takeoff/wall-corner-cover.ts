import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * What corner units cover at outside corners of walls, legs alternating: half to each face.
 *
 * @example
 * ```ts
 * wallCornerCover({ edgeHeight: "18 ft", longLeg: "8 in", shortLeg: "4 in" }).eachFace.toString(); // "9 ft2"
 * ```
 */
export const wallCornerCover = /* @__PURE__ */ calculation({
  id: "takeoff.wall-corner-cover",
  title: "Cover of corner units at wall corners",
  given: {
    edgeHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of the outside corners together; nought where there are none", atLeast: 0 },
    longLeg: { is: "length", unit: ["in", "mm"], symbol: "a", says: "long leg of a corner unit, measured on its face", above: 0 },
    shortLeg: { is: "length", unit: ["in", "mm"], symbol: "b", says: "short leg of a corner unit, measured on its face", above: 0 },
  },
  steps: {
    bothFaces: { is: "area", unit: ["ft2", "m2"], symbol: "A_c", says: "what they cover of both faces together", formula: "edgeHeight * (longLeg + shortLeg)", basis: geometry },
    eachFace: { is: "area", unit: ["ft2", "m2"], symbol: "A_e", says: "what they cover of each face", formula: "bothFaces / 2", basis: geometry },
  },
});
