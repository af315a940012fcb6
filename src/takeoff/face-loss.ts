import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * How much smaller the stone face is than the backing: at each inside corner between two clad faces, the stone and bed of
 * the one stand before the edge of the other.
 *
 * @example
 * ```ts
 * faceLoss({ insideFaces: "18 ft", unitThickness: "1-1/2 in", bed: "1/2 in" }).loss.toString(); // "3 ft2"
 * ```
 */
export const faceLoss = /* @__PURE__ */ calculation({
  id: "takeoff.face-loss",
  title: "Stone face lost at inside corners",
  given: {
    insideFaces: { is: "length", unit: ["ft", "m"], symbol: "i", says: "inside corners, each counted once for each clad face that meets there", atLeast: 0 },
    unitThickness: { is: "length", unit: ["in", "mm"], symbol: "u", says: "mean thickness of the units at their edges", above: 0 },
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean thickness of the bed on the wall", atLeast: 0 },
  },
  steps: {
    loss: { is: "area", unit: ["ft2", "m2"], symbol: "A_l", says: "what the inside corners take from the stone face", formula: "insideFaces * (unitThickness + bed)", basis: geometry },
  },
});
