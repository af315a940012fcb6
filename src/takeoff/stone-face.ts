import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The whole stone face of a job: walls without their openings, soffits, returns into the openings, the legs of corner
 * units that turn onto a face that is not clad, what outside corners add, less what inside corners take.
 *
 * @example
 * ```ts
 * stoneFace({ walls: "360 ft2", openings: "60 ft2", soffits: "12 ft2", returns: "20 ft2", turned: "6 ft2", growth: "4 ft2", loss: "2 ft2" }).face.toString(); // "340 ft2"
 * ```
 */
export const stoneFace = /* @__PURE__ */ calculation({
  id: "takeoff.stone-face",
  title: "Whole stone face",
  given: {
    walls: { is: "area", unit: ["ft2", "m2"], symbol: "A_w", says: "walls, openings in", above: 0 },
    openings: { is: "area", unit: ["ft2", "m2"], symbol: "A_o", says: "all openings", atLeast: 0 },
    soffits: { is: "area", unit: ["ft2", "m2"], symbol: "A_s", says: "soffits that are clad", atLeast: 0 },
    returns: { is: "area", unit: ["ft2", "m2"], symbol: "A_r", says: "returns into the openings", atLeast: 0 },
    turned: { is: "area", unit: ["ft2", "m2"], symbol: "A_t", says: "legs of corner units on faces that are not clad", atLeast: 0 },
    growth: { is: "area", unit: ["ft2", "m2"], symbol: "A_g", says: "what outside corners add; nought where it was measured to the stone face", atLeast: 0 },
    loss: { is: "area", unit: ["ft2", "m2"], symbol: "A_l", says: "what inside corners take; nought where it was measured to the stone face", atLeast: 0 },
  },
  steps: {
    face: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "whole stone face, corner cover in", formula: "walls - openings + soffits + returns + turned + growth - loss", basis: geometry, above: 0 },
  },
});
