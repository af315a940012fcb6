import { calculation } from "../core/calculation.js";
import { arithmetic, geometry, statics } from "../data/basis.js";

/**
 * Screws of a ledger at the studs, for the courses on it that have not set: no bond to the wall is counted on. What one
 * screw carries is asked for and not computed.
 *
 * @example
 * ```ts
 * const ledger = ledgerScrews({ wetLoad: "20 psf", uncuredHeight: "4 ft", ledgerLength: "24 ft", studSpacing: "16 in", allowableLoadPerScrew: "60 lbf" });
 * ledger.lineLoad.toString(); // "80 lbf/ft"
 * ledger.spacingByLoad.toString(); // "9 in"
 * ledger.screwsPerStud.toString(); // "2"
 * ledger.screws.toString(); // "38"
 * ```
 */
export const ledgerScrews = /* @__PURE__ */ calculation({
  id: "layout.ledger-screws",
  title: "Screws of a ledger under courses that have not set",
  given: {
    wetLoad: { is: "pressure", unit: ["psf", "kPa"], symbol: "w", says: "load of the wet veneer: units, bed and joints", above: 0 },
    uncuredHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of courses that have not set", above: 0 },
    ledgerLength: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length of the ledger", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs", above: 0 },
    allowableLoadPerScrew: { is: "force", unit: ["lbf", "N"], symbol: "P", says: "load that one screw carries, by whoever answers for it", above: 0 },
  },
  steps: {
    lineLoad: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "q", says: "load along the ledger", formula: "wetLoad * uncuredHeight", basis: statics },
    spacingByLoad: { is: "length", unit: ["in", "mm"], symbol: "s", formula: "allowableLoadPerScrew / lineLoad", basis: statics },
    loadPerStud: { is: "force", unit: ["lbf", "N"], symbol: "P_s", formula: "lineLoad * studSpacing", basis: statics },
    screwsPerStud: { is: "count", symbol: "n_s", formula: "ceil(loadPerStud / allowableLoadPerScrew)", basis: arithmetic },
    loadPerScrew: { is: "force", unit: ["lbf", "N"], symbol: "P_1", formula: "loadPerStud / screwsPerStud", basis: statics },
    studs: { is: "count", symbol: "n", says: "studs, both ends included", formula: "ceil(ledgerLength / studSpacing) + 1", basis: geometry },
    screws: { is: "count", symbol: "N", says: "screws, and holes through the barrier when it is gone", formula: "studs * screwsPerStud", basis: arithmetic },
    ledgerCapacity: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "q_a", says: "load that these screws carry", formula: "screwsPerStud * allowableLoadPerScrew / studSpacing", basis: statics },
  },
  cautions: [
    "An estimate: the screw, its bending over the boards, the stud, the ledger and its joints are not checked; the weight of ledger and tools comes besides. Local code and a licensed design professional decide.",
    "Where the ledger runs over three studs or more, the first from each end takes up to a quarter more.",
    "Nobody stands on a ledger, and it stays until the courses on it have set.",
  ],
});
