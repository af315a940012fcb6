import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * How far the head joints of one course are shifted from those of the next, and how often they come again.
 *
 * @example
 * ```ts
 * const half = bondShift({ unitLength: "11-5/8 in", headJoint: "3/8 in", offset: "50 %" });
 * half.shift.toString(); // "6 in"
 * half.module.toString(); // "12 in"
 * ```
 */
export const bondShift = /* @__PURE__ */ calculation({
  id: "layout.bond-shift",
  title: "Shift of the head joints between courses",
  given: {
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "L", says: "actual face length of one unit", above: 0 },
    headJoint: { is: "length", unit: ["in", "mm"], symbol: "t_h", says: "width of the upright joints", atLeast: 0 },
    offset: { is: "ratio", unit: "%", symbol: "o", says: "shift of the head joints from one course to the next, as a share of a unit and its joint", atLeast: 0, below: 1 },
  },
  steps: {
    module: { is: "length", unit: ["in", "mm"], symbol: "M", says: "a unit and its joint", formula: "unitLength + headJoint", basis: geometry },
    shift: { is: "length", unit: ["in", "mm"], symbol: "s", says: "shift of the head joints", formula: "offset * module", basis: geometry },
  },
});
