import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * What two corner leads leave of a course, and how many units fill it: no whole number of them means cut pieces or another
 * joint, to be found before the leads are set.
 *
 * @example
 * ```ts
 * const gap = leadGap({ wallLength: "152-3/8 in", leftLength: "52 in", rightLength: "52 in", unitLength: "11-5/8 in", joint: "3/8 in" });
 * gap.gap.toString(); // "48.375 in"
 * gap.units.toString(); // "4"
 * gap.over.toString(); // "0 in"
 * ```
 */
export const leadGap = /* @__PURE__ */ calculation({
  id: "layout.lead-gap",
  title: "Gap between corner leads",
  given: {
    wallLength: { is: "length", unit: ["in", "mm"], symbol: "L", says: "length of the face in this course, from corner to corner", above: 0 },
    leftLength: { is: "length", unit: ["in", "mm"], symbol: "l_1", says: "length of the left lead in this course; nought where there is none and the field begins with a joint", atLeast: 0 },
    rightLength: { is: "length", unit: ["in", "mm"], symbol: "l_2", says: "length of the right lead in this course", atLeast: 0 },
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "u", says: "actual face length of one unit", above: 0 },
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of the upright joints that is wanted", atLeast: 0 },
  },
  steps: {
    gap: { is: "length", unit: ["in", "mm"], symbol: "g", says: "from lead to lead, a joint at each end of it", formula: "wallLength - leftLength - rightLength", basis: geometry, above: 0 },
    units: { is: "count", symbol: "n", says: "units that fill it, before rounding", formula: "(gap - joint) / (unitLength + joint)", basis: geometry, atLeast: 0 },
    whole: { is: "count", symbol: "n_w", says: "whole units in it", formula: "floor(units)", basis: arithmetic },
    over: { is: "length", unit: ["in", "mm"], symbol: "o", says: "what whole units and their joints leave over, for a cut piece and its joint; nought where the field closes", formula: "gap - joint - whole * (unitLength + joint)", basis: geometry },
  },
  cautions: ["Each course of racked leads has its own gap, wider by both steps than the one below it. A cut under half a unit is a sliver: see layout.bond-pattern for joints that close without one."],
});
