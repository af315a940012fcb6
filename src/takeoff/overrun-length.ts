import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Length of sills or heads that go past both ends of their openings.
 *
 * @example
 * ```ts
 * overrunLength({ length: "24 ft", ends: 12, beyond: "4 in" }).runs.toString(); // "28 ft"
 * ```
 */
export const overrunLength = /* @__PURE__ */ calculation({
  id: "takeoff.overrun-length",
  title: "Sills and heads with their ends",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "L", says: "sills or heads by the width of their openings", above: 0 },
    ends: { is: "count", symbol: "n", says: "ends, two an opening", atLeast: 1, whole: true },
    beyond: { is: "length", unit: ["in", "mm"], symbol: "e", says: "how far they go past each end", atLeast: 0 },
  },
  steps: {
    runs: { is: "length", unit: ["ft", "m"], symbol: "L_e", says: "length with the ends", formula: "length + ends * beyond", basis: geometry },
  },
});
