import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";
import { usualJoint } from "../data/joints.js";

/**
 * Length of joint in an area of a regular coursed face; the crossings of head and bed joints are counted once.
 *
 * @example
 * ```ts
 * mortarJointLength({ unitLength: "11-5/8 in", unitHeight: "3-5/8 in" }).perArea.toString(); // "3.90625 ft/ft2"
 * ```
 */
export const mortarJointLength = /* @__PURE__ */ calculation({
  id: "joints.mortar-joint-length",
  title: "Length of joint in a coursed face",
  given: {
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "L", says: "actual face length of one unit", above: 0 },
    unitHeight: { is: "length", unit: ["in", "mm"], symbol: "H", says: "actual face height of one unit", above: 0 },
    headJoint: { is: "length", unit: ["in", "mm"], symbol: "t_h", says: "width of the upright joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
    bedJoint: { is: "length", unit: ["in", "mm"], symbol: "t_b", says: "width of the level joints", atLeast: 0, default: "3/8 in", basis: usualJoint },
  },
  steps: {
    unitsPerArea: { is: "countPerArea", unit: ["/ft2", "/m2"], symbol: "N", formula: "1 / ((unitLength + headJoint) * (unitHeight + bedJoint))", basis: geometry },
    bedPerArea: { is: "lengthPerArea", unit: ["ft/ft2", "m/m2"], symbol: "l_b", says: "level joints, which run through", formula: "1 / (unitHeight + bedJoint)", basis: geometry },
    headPerArea: { is: "lengthPerArea", unit: ["ft/ft2", "m/m2"], symbol: "l_h", says: "upright joints, between the level ones", formula: "unitsPerArea * unitHeight", basis: geometry },
    perArea: { is: "lengthPerArea", unit: ["ft/ft2", "m/m2"], symbol: "l", says: "all joints", formula: "bedPerArea + headPerArea", basis: geometry },
  },
});
