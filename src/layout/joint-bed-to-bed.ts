import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The joint that closes a run with as many joints as units: courses from bed to bed, a course from a corner to a jamb.
 *
 * @example
 * ```ts
 * // Three courses of 2-1/4 in in 8 in: 5/12 in.
 * jointBedToBed({ run: "8 in", unitsTotal: "6-3/4 in", units: 3 }).joint.toJSON(); // { value: "5/12", unit: "in" }
 * ```
 */
export const jointBedToBed = /* @__PURE__ */ calculation({
  id: "layout.joint-bed-to-bed",
  title: "Joint that closes a run from bed to bed",
  given: {
    run: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height or length to be filled, between its two ends", above: 0 },
    unitsTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of all units in the run added up, without joints", above: 0 },
    units: { is: "count", symbol: "n", says: "units in the run; of courses one each, a half unit as a half", atLeast: 1 },
  },
  steps: {
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", formula: "(run - unitsTotal) / units", basis: geometry, atLeast: 0 },
  },
});
