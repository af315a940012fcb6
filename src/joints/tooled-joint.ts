import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Mortar left in joints once they are tooled.
 *
 * @example
 * ```ts
 * tooledJoint({ volume: "8 ft3", toolingShare: "25 %" }).tooled.toString(); // "6 ft3"
 * ```
 */
export const tooledJoint = /* @__PURE__ */ calculation({
  id: "joints.tooled-joint",
  title: "Mortar left in tooled joints",
  given: {
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar in the joints, filled to their depth", atLeast: 0 },
    toolingShare: { is: "ratio", unit: "%", symbol: "f_t", says: "share of the filled joint that tooling takes out", atLeast: 0, below: 1 },
  },
  steps: {
    tooled: { is: "volume", unit: ["ft3", "L"], symbol: "V_t", says: "mortar left in the joints", formula: "volume * (1 - toolingShare)", basis: arithmetic },
  },
});
