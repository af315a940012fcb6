import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Courses under a ledger at the lowest ground, where the foot of the stone follows it: whole ones, and what is left below
 * them for a cut unit and its joint.
 *
 * @example
 * ```ts
 * const lowest = stoneBelow({ below: "4 in", groundFall: "14 in", unitHeight: "7-5/8 in", bedJoint: "3/8 in" });
 * lowest.courses.toString(); // "2"
 * lowest.rest.toString(); // "2 in"
 * ```
 */
export const stoneBelow = /* @__PURE__ */ calculation({
  id: "layout.stone-below",
  title: "Courses under a ledger at the lowest ground",
  given: {
    below: { is: "length", unit: ["in", "mm"], symbol: "b", says: "from the foot of the stone to the ledger, at the highest ground", atLeast: 0 },
    groundFall: { is: "length", unit: ["in", "mm"], symbol: "f", says: "fall of the ground along the wall, from its highest point to its lowest", atLeast: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0 },
  },
  steps: {
    height: { is: "length", unit: ["in", "mm"], symbol: "h", says: "from the foot of the stone to the ledger, at the lowest ground", formula: "below + groundFall", basis: geometry },
    courses: { is: "count", symbol: "n", says: "whole courses in it", formula: "floor(height / (unitHeight + bedJoint))", basis: arithmetic },
    rest: { is: "length", unit: ["in", "mm"], symbol: "r", says: "what is left below them, unit and joint", formula: "height - courses * (unitHeight + bedJoint)", basis: geometry },
  },
});
