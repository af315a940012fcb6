import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Whether joints stay as wide as they should: a tape held over ten units and ten joints, from one edge of a unit to the same
 * edge of the eleventh, against what the units alone measure.
 *
 * @example
 * ```ts
 * const check = jointDrift({ taped: "80-5/8 in", unitsTotal: "76-1/4 in", joints: 10, jointWanted: "3/8 in", jointsToGo: 30 });
 * check.meanJoint.toString(); // "0.4375 in"
 * check.drift.toString(); // "0.0625 in"
 * check.offAtEnd.toString(); // "2.5 in"
 * ```
 */
export const jointDrift = /* @__PURE__ */ calculation({
  id: "joints.joint-drift",
  title: "Drift of the joints by tape",
  given: {
    taped: { is: "length", unit: ["in", "mm"], symbol: "R", says: "tape over as many units as joints, from an edge of the first unit to the same edge of the unit after the last", above: 0 },
    unitsTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of the units under the tape added up, without joints", above: 0 },
    joints: { is: "count", symbol: "n", says: "joints under the tape; commonly ten", atLeast: 1, whole: true },
    jointWanted: { is: "length", unit: ["in", "mm"], symbol: "j_w", says: "joint that is wanted", atLeast: 0 },
    jointsToGo: { is: "count", symbol: "m", says: "joints still to come in this run; none where it ends here", atLeast: 0, whole: true },
  },
  steps: {
    meanJoint: { is: "length", unit: ["in", "mm"], symbol: "j_m", says: "joint on the wall, on average", formula: "(taped - unitsTotal) / joints", basis: geometry, atLeast: 0 },
    drift: { is: "length", unit: ["in", "mm"], symbol: "d", says: "how much wider than wanted; below nought where narrower", formula: "meanJoint - jointWanted", basis: arithmetic },
    offNow: { is: "length", unit: ["in", "mm"], symbol: "D", says: "how far the joints under the tape have run out together", formula: "drift * joints", basis: arithmetic },
    offAtEnd: { is: "length", unit: ["in", "mm"], symbol: "D_e", says: "how far the run will be out at its end if nobody changes the joint", formula: "drift * (joints + jointsToGo)", basis: arithmetic },
  },
  cautions: ["A mean says nothing of one wide joint beside a narrow one: look at each. Units vary, so measure those under the tape."],
});
