import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { volumeKept } from "../data/planning.js";

/**
 * Mean bed that the empty bags prove, beside the bed that was planned.
 *
 * @example
 * ```ts
 * const bed = bedFromUsage({ bagsUsed: 44, bagYield: "0.5 ft3", lossShare: "10 %", area: "480 ft2", plannedBed: "1/2 in" });
 * bed.meanBed.to("in").toFixed(3); // "0.495"
 * bed.ofPlanned.to("%").toFixed(1); // "99.0"
 * ```
 */
export const bedFromUsage = /* @__PURE__ */ calculation({
  id: "planning.bed-from-usage",
  title: "Mean bed from the bags used",
  given: {
    bagsUsed: { is: "count", symbol: "n", says: "bags emptied for this area, parts of a bag counted", above: 0 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
    lossShare: { is: "ratio", unit: "%", symbol: "s", says: "share of what was used that did not end on the wall", atLeast: 0, below: 1 },
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "stone face that was set, corner cover included", above: 0 },
    plannedBed: { is: "length", unit: ["in", "mm"], symbol: "b_p", says: "bed and back-butter together that were planned, over the whole face", above: 0 },
  },
  steps: {
    onWall: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar on the wall", formula: "bagsUsed * bagYield * (1 - lossShare)", basis: volumeKept },
    meanBed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean bed and back-butter together", formula: "onWall / area", basis: volumeKept },
    ofPlanned: { is: "ratio", unit: "%", symbol: "k", says: "mean bed as a share of the planned one", formula: "meanBed / plannedBed", basis: arithmetic },
  },
  cautions: ["A mean: a thick bed in a hollow hides a thin one elsewhere, and mortar pressed into the joints is counted in the bed."],
});
