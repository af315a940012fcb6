import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { eighths, movementCaution, sealantEquation } from "../data/movement.js";

/**
 * Width of a sealed joint for the movement it takes up: movement over what the sealant can give, with the tolerance of
 * building, up to the next 1/8 in.
 *
 * @example
 * ```ts
 * const joint = jointForMovement({ thermal: "0.144 in", moisture: "0.12 in", structural: "0 in", sealantCapability: "50 %", tolerance: "1/8 in" });
 * joint.needed.toString(); // "0.653 in"
 * joint.width.toString(); // "0.75 in"
 * ```
 */
export const jointForMovement = /* @__PURE__ */ calculation({
  id: "movement.joint-for-movement",
  title: "Width of a joint for its movement",
  given: {
    thermal: { is: "length", unit: ["in", "mm"], symbol: "m_t", says: "thermal movement at the joint", atLeast: 0 },
    moisture: { is: "length", unit: ["in", "mm"], symbol: "m_m", says: "moisture movement at the joint", atLeast: 0 },
    structural: { is: "length", unit: ["in", "mm"], symbol: "m_s", says: "movement of the structure at the joint, from its designer; 0 in where there is none", atLeast: 0 },
    sealantCapability: { is: "ratio", unit: "%", symbol: "X", says: "movement that the sealant follows, to the width of the joint, from its data sheet: 25 % for class 25", above: 0, atMost: 1 },
    tolerance: { is: "length", unit: ["in", "mm"], symbol: "t", says: "tolerance of building on the width", atLeast: 0 },
  },
  constants: {
    eighth: { is: "length", unit: "in", symbol: "t_8", value: "1/8 in", says: "step of joint widths", basis: eighths },
  },
  steps: {
    movement: { is: "length", unit: ["in", "mm"], symbol: "m", says: "all movement at the joint", formula: "thermal + moisture + structural", basis: arithmetic, above: 0 },
    needed: { is: "length", unit: ["in", "mm"], symbol: "W_n", says: "width needed", formula: "movement / sealantCapability + tolerance", basis: sealantEquation },
    width: { is: "length", unit: ["in", "mm"], symbol: "W", says: "width, up to the next 1/8 in", formula: "ceil(needed / eighth) * eighth", basis: eighths },
  },
  cautions: [movementCaution, "The sealant's data sheet sets its least and greatest width and how deep it goes. Nothing hard may be in the joint."],
});
