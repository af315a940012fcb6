import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Height of the ledger, from a course line that the courses must meet: as many whole courses below that line as leave the
 * clearance over the ground, and what is to be set under the ledger.
 *
 * @example
 * ```ts
 * // A sill at 40 in; 4 in clear of the ground, nothing under the ledger.
 * const ledger = ledgerHeight({ courseLine: "40 in", unitHeight: "7-5/8 in", bedJoint: "3/8 in", clearance: "4 in", leastBelow: "0 in" });
 * ledger.courses.toString(); // "4"
 * ledger.height.toString(); // "8 in"
 * ledger.below.toString(); // "4 in"
 * ```
 */
export const ledgerHeight = /* @__PURE__ */ calculation({
  id: "layout.ledger-height",
  title: "Height of the ledger under a course line",
  given: {
    courseLine: { is: "length", unit: ["in", "mm"], symbol: "H_c", says: "course line that the courses must meet, over the highest ground along the wall", above: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0 },
    clearance: { is: "length", unit: ["in", "mm"], symbol: "g", says: "clearance of the stone over the ground, by the code or the specification", atLeast: 0 },
    leastBelow: { is: "length", unit: ["in", "mm"], symbol: "b_0", says: "least height to be set under the ledger, unit and joint; nought where nothing is", atLeast: 0 },
  },
  steps: {
    courseHeight: { is: "length", unit: ["in", "mm"], symbol: "c", says: "unit and one bed joint", formula: "unitHeight + bedJoint", basis: geometry },
    courses: { is: "count", symbol: "n", says: "whole courses from the ledger to the course line", formula: "floor((courseLine - clearance - leastBelow) / courseHeight)", basis: arithmetic, atLeast: 0 },
    height: { is: "length", unit: ["in", "mm"], symbol: "h", says: "top of the ledger over the highest ground", formula: "courseLine - courses * courseHeight", basis: geometry },
    below: { is: "length", unit: ["in", "mm"], symbol: "b", says: "from the clearance to the ledger, at the highest ground", formula: "height - clearance", basis: geometry },
  },
});
