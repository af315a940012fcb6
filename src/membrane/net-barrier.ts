import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Barrier to be put on: the walls less the openings that are deducted, with everything that is turned past an edge.
 *
 * @example
 * ```ts
 * netBarrier({ gross: "1200 ft2", deducted: "180 ft2", openingReturns: "46 ft2", edgeReturns: "20 ft2" }).net.toString(); // "1086 ft2"
 * ```
 */
export const netBarrier = /* @__PURE__ */ calculation({
  id: "membrane.net-barrier",
  title: "Barrier with its returns",
  given: {
    gross: { is: "area", unit: ["ft2", "m2"], symbol: "A_g", says: "walls, openings in", above: 0 },
    deducted: { is: "area", unit: ["ft2", "m2"], symbol: "A_o", says: "openings that are deducted", atLeast: 0 },
    openingReturns: { is: "area", unit: ["ft2", "m2"], symbol: "A_r", says: "returns into openings", atLeast: 0 },
    edgeReturns: { is: "area", unit: ["ft2", "m2"], symbol: "A_e", says: "returns over parapets, under sills and round corners", atLeast: 0 },
  },
  steps: {
    returns: { is: "area", unit: ["ft2", "m2"], symbol: "A_t", says: "all returns", formula: "openingReturns + edgeReturns", basis: arithmetic },
    face: { is: "area", unit: ["ft2", "m2"], symbol: "A_f", says: "walls less the openings that are deducted", formula: "gross - deducted", basis: arithmetic, atLeast: 0 },
    net: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "barrier with its returns", formula: "face + returns", basis: arithmetic, above: 0 },
  },
});
