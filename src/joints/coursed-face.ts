import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";
import { usualJoint } from "../data/joints.js";

/**
 * Mortar that fills the joints of a regular coursed face, from the size of the unit and of the joint. The crossings of
 * head and bed joints are counted once.
 *
 * @example
 * ```ts
 * const mortar = coursedFace({ area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" });
 * mortar.unitsPerArea.toString(); // "3 /ft2"
 * ```
 */
export const coursedFace = /* @__PURE__ */ calculation({
  id: "joints.coursed-face",
  title: "Joint mortar for a coursed face",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "wall face to be pointed, openings out", above: 0 },
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "L", says: "actual face length of one unit", above: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    headJoint: { is: "length", unit: ["in", "mm"], symbol: "t_h", says: "width of the upright joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint to be filled", above: 0 },
  },
  steps: {
    unitsPerArea: { is: "countPerArea", unit: ["/ft2", "/m2"], symbol: "N", formula: "1 / ((unitLength + headJoint) * (unitHeight + bedJoint))", basis: geometry },
    jointShare: { is: "ratio", unit: "%", symbol: "f", formula: "1 - unitsPerArea * unitLength * unitHeight", basis: geometry },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar in all joints, filled to the depth", formula: "area * jointShare * depth", basis: geometry },
    bedVolume: { is: "volume", unit: ["ft3", "L"], symbol: "V_b", says: "of this in the level joints, which run through", formula: "area * bedJoint / (unitHeight + bedJoint) * depth", basis: geometry },
    headVolume: { is: "volume", unit: ["ft3", "L"], symbol: "V_h", says: "of this in the upright joints between them", formula: "volume - bedVolume", basis: geometry },
  },
  cautions: ["A tooled joint holds less than its full depth: see joints.tooling-loss."],
});
