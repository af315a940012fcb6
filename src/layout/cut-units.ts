import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Units that must be cut: one in each course that ends in a cut piece at a jamb or an end, and every unit of a course that is
 * ripped along a head, a sill or the foot. An estimate for hours and blades, before the courses are drawn.
 *
 * @example
 * ```ts
 * const saw = cutUnits({ endHeight: "48 ft", courseHeight: "8 in", endShare: "50 %", rippedLength: "32 ft", unitLength: "15-5/8 in", headJoint: "3/8 in" });
 * saw.endCuts.toString(); // "36"
 * saw.ripCuts.toString(); // "24"
 * saw.cuts.toString(); // "60"
 * ```
 */
export const cutUnits = /* @__PURE__ */ calculation({
  id: "layout.cut-units",
  title: "Units that must be cut",
  given: {
    endHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "jambs and ends where courses stop without a corner, their heights added up", atLeast: 0 },
    courseHeight: { is: "length", unit: ["in", "mm"], symbol: "c", says: "a unit and its bed joint", above: 0 },
    endShare: { is: "ratio", unit: "%", symbol: "f", says: "share of these course ends that are cut: 50 % in half bond on a module, 100 % where nothing closes", atLeast: 0, atMost: 1 },
    rippedLength: { is: "length", unit: ["ft", "m"], symbol: "l", says: "heads, sills, foot and top along which a course is cut to height, added up", atLeast: 0 },
    unitLength: { is: "length", unit: ["in", "mm"], symbol: "u", says: "actual face length of one unit", above: 0 },
    headJoint: { is: "length", unit: ["in", "mm"], symbol: "t_h", says: "width of the upright joints", atLeast: 0 },
  },
  steps: {
    ends: { is: "count", symbol: "n_e", says: "course ends there, before rounding", formula: "endHeight / courseHeight", basis: geometry },
    endCuts: { is: "count", symbol: "n_c", says: "pieces cut to length", formula: "ceil(ends * endShare)", basis: arithmetic },
    ripCuts: { is: "count", symbol: "n_r", says: "pieces cut to height", formula: "ceil(rippedLength / (unitLength + headJoint))", basis: geometry },
    cuts: { is: "count", symbol: "n", says: "pieces cut", formula: "endCuts + ripCuts", basis: arithmetic },
  },
  cautions: ["Cutting stone and mortar sets silica free: cut wet or with suction at the blade, wear the mask that the local rule asks for, and keep others out of the dust."],
});
