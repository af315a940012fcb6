import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The joint that closes a run with one joint more than units: an opening with a joint at both its ends, or the field
 * between two corner units.
 *
 * @example
 * ```ts
 * jointInOpening({ run: "160-3/8 in", unitsTotal: "156-1/4 in", units: 10 }).joint.toString(); // "0.375 in"
 * ```
 */
export const jointInOpening = /* @__PURE__ */ calculation({
  id: "layout.joint-in-opening",
  title: "Joint that closes a run with a joint at both ends",
  given: {
    run: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height or length to be filled, between its two ends", above: 0 },
    unitsTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of all units in the run added up, without joints", above: 0 },
    units: { is: "count", symbol: "n", says: "units in the run; of courses one each, a half unit as a half", atLeast: 1 },
  },
  steps: {
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", formula: "(run - unitsTotal) / (units + 1)", basis: geometry, atLeast: 0 },
  },
});
