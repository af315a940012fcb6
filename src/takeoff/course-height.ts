import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";
import { usualJoint } from "../data/joints.js";

/**
 * Height of a course: a unit and one bed joint.
 *
 * @example
 * ```ts
 * courseHeight({ unitHeight: "3-5/8 in" }).courseHeight.toString(); // "4 in"
 * ```
 */
export const courseHeight = /* @__PURE__ */ calculation({
  id: "takeoff.course-height",
  title: "Height of a course",
  given: {
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
  },
  steps: {
    courseHeight: { is: "length", unit: ["in", "mm"], symbol: "c", says: "unit and one bed joint", formula: "unitHeight + bedJoint", basis: geometry },
  },
});
