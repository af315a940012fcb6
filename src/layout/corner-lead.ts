import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * A corner lead racked back: courses set from the corner inward, each shorter than the one below by one step, so that the
 * field is toothed into it. How high it stands, and how far in its lowest course reaches.
 *
 * @example
 * ```ts
 * const lead = cornerLead({ courses: 6, courseHeight: "8 in", topLength: "12 in", step: "8 in" });
 * lead.height.toString(); // "48 in"
 * lead.footLength.toString(); // "52 in"
 * ```
 */
export const cornerLead = /* @__PURE__ */ calculation({
  id: "layout.corner-lead",
  title: "Corner lead racked back",
  given: {
    courses: { is: "count", symbol: "n", says: "courses in the lead", atLeast: 1, whole: true },
    courseHeight: { is: "length", unit: ["in", "mm"], symbol: "c", says: "a unit and its bed joint", above: 0 },
    topLength: { is: "length", unit: ["in", "mm"], symbol: "l_t", says: "length of the top course on this face, from the corner to the end of its last unit", above: 0 },
    step: { is: "length", unit: ["in", "mm"], symbol: "s", says: "how much shorter each course is than the one below it: the shift of the bond, see layout.bond-shift", above: 0 },
  },
  steps: {
    height: { is: "length", unit: ["in", "mm"], symbol: "h", says: "height of the lead", formula: "courses * courseHeight", basis: geometry },
    footLength: { is: "length", unit: ["in", "mm"], symbol: "l_f", says: "length of its lowest course, from the corner", formula: "topLength + (courses - 1) * step", basis: geometry },
  },
  cautions: ["The height must not be above what the ledger holds and the mortar carries today: see timing.lift-height."],
});
