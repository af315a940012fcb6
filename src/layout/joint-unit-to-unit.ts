import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The joint that closes a run with one joint fewer than units: a pier, or courses from the foot of the first unit to the
 * top of the last.
 *
 * @example
 * ```ts
 * jointUnitToUnit({ run: "159-5/8 in", unitsTotal: "156-1/4 in", units: 10 }).joint.toString(); // "0.375 in"
 * ```
 */
export const jointUnitToUnit = /* @__PURE__ */ calculation({
  id: "layout.joint-unit-to-unit",
  title: "Joint that closes a run from unit to unit",
  given: {
    run: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height or length to be filled, between its two ends", above: 0 },
    unitsTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of all units in the run added up, without joints", above: 0 },
    units: { is: "count", symbol: "n", says: "units in the run; of courses one each, a half unit as a half", above: 1 },
  },
  steps: {
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", formula: "(run - unitsTotal) / (units - 1)", basis: geometry, atLeast: 0 },
  },
});
