import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * What corner units cover where they turn into an opening: the long leg on the wall, the short leg in the return, cut to
 * its depth where that is less. Where the return is deeper the legs alternate, and the cover is the same.
 *
 * @example
 * ```ts
 * returnCornerCover({ edgeHeight: "12 ft", longLeg: "8 in", shortLeg: "4 in", returnDepth: "6 in" }).cover.toString(); // "12 ft2"
 * ```
 */
export const returnCornerCover = /* @__PURE__ */ calculation({
  id: "takeoff.return-corner-cover",
  title: "Cover of corner units at a return",
  given: {
    edgeHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "edges of the return that are set with corner units", above: 0 },
    longLeg: { is: "length", unit: ["in", "mm"], symbol: "a", says: "long leg of a corner unit, measured on its face", above: 0 },
    shortLeg: { is: "length", unit: ["in", "mm"], symbol: "b", says: "short leg of a corner unit, measured on its face", above: 0 },
    returnDepth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of the return", above: 0 },
  },
  steps: {
    inReturn: { is: "length", unit: ["in", "mm"], symbol: "b_r", says: "leg in the return, cut where it must be", formula: "min(shortLeg, returnDepth)", basis: geometry },
    cover: { is: "area", unit: ["ft2", "m2"], symbol: "A_c", says: "what the corner units cover, both faces together", formula: "edgeHeight * (longLeg + inReturn)", basis: geometry },
  },
  cautions: ["A return that is shallower than the short leg wants every corner unit cut."],
});
