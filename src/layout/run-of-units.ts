import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * What a number of units makes with its joints: one joint fewer than units, as many, and one more. Of courses these are
 * heights, of a course lengths.
 *
 * @example
 * ```ts
 * const wall = runOfUnits({ unitsTotal: "156-1/4 in", units: 10, joint: "3/8 in" });
 * wall.unitToUnit.toString(); // "159.625 in"
 * wall.bedToBed.toString(); // "160 in"
 * wall.inOpening.toString(); // "160.375 in"
 * ```
 */
export const runOfUnits = /* @__PURE__ */ calculation({
  id: "layout.run-of-units",
  title: "Run of a number of units with their joints",
  given: {
    unitsTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of all units in the run added up, without joints", above: 0 },
    units: { is: "count", symbol: "n", says: "units in the run; of courses one each, a half unit as a half", atLeast: 1 },
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", atLeast: 0 },
  },
  steps: {
    unitToUnit: { is: "length", unit: ["in", "mm"], symbol: "H_u", says: "with one joint fewer than units", formula: "unitsTotal + (units - 1) * joint", basis: geometry },
    bedToBed: { is: "length", unit: ["in", "mm"], symbol: "H_b", says: "with as many joints as units", formula: "unitsTotal + units * joint", basis: geometry },
    inOpening: { is: "length", unit: ["in", "mm"], symbol: "H_o", says: "with one joint more than units", formula: "unitsTotal + (units + 1) * joint", basis: geometry },
  },
});
