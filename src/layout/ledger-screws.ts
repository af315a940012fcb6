import { calculation } from "../core/calculation.js";
import { arithmetic, geometry, statics } from "../data/basis.js";
import { standardWeight } from "../data/timing.js";

/**
 * Screws of a ledger at the studs, for the courses on it that have not set: no bond to the wall is counted on. What one
 * screw carries is asked for and not computed.
 *
 * @example
 * ```ts
 * const ledger = ledgerScrews({ wetWeight: "20 lb/ft2", uncuredHeight: "4 ft", ledgerLength: "24 ft", studSpacing: "16 in", allowableLoadPerScrew: "60 lbf" });
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
    wetWeight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "w", says: "installed wet weight of the veneer: units, bed and joints", above: 0 },
    uncuredHeight: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of courses on the ledger that have not set", above: 0 },
    ledgerLength: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length of the ledger", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    allowableLoadPerScrew: { is: "force", unit: ["lbf", "N"], symbol: "P", says: "load that one screw of the ledger carries, by whoever answers for it", above: 0 },
  },
  constants: {
    poundForce: { is: "force", unit: ["lbf", "N"], symbol: "F", value: "1 lbf", says: "what a pound weighs", basis: standardWeight },
    pound: { is: "mass", unit: ["lb", "kg"], symbol: "m", value: "1 lb", says: "a pound", basis: standardWeight },
  },
  steps: {
    lineLoad: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "q", says: "load along the ledger", formula: "wetWeight * poundForce / pound * uncuredHeight", basis: statics },
    spacingByLoad: { is: "length", unit: ["in", "mm"], symbol: "s", says: "spacing at which one screw would do, wherever it bit", formula: "allowableLoadPerScrew / lineLoad", basis: statics },
    loadPerStud: { is: "force", unit: ["lbf", "N"], symbol: "P_s", says: "load at a stud between two others", formula: "lineLoad * studSpacing", basis: statics },
    screwsPerStud: { is: "count", symbol: "n_s", says: "screws at each stud", formula: "ceil(loadPerStud / allowableLoadPerScrew)", basis: arithmetic },
    loadPerScrew: { is: "force", unit: ["lbf", "N"], symbol: "P_1", says: "load on each of them", formula: "loadPerStud / screwsPerStud", basis: statics },
    studs: { is: "count", symbol: "n", says: "studs along the ledger, both ends included", formula: "ceil(ledgerLength / studSpacing) + 1", basis: geometry },
    screws: { is: "count", symbol: "N", says: "screws in the ledger, and holes through the barrier when it is gone", formula: "studs * screwsPerStud", basis: arithmetic },
    ledgerCapacity: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "q_a", says: "load that a length of the ledger carries with these screws", formula: "screwsPerStud * allowableLoadPerScrew / studSpacing", basis: statics },
  },
  cautions: [
    "Estimate by statics from a load per screw that is asked for. It does not check the screw, its bending over the boards between ledger and stud, the stud, the ledger itself nor its joints; the weight of the ledger, of people and of tools on it comes besides. The local code and a licensed design professional decide.",
    "Each stud is taken to carry its own half bays; where the ledger runs over three studs or more, the first from each end takes up to a quarter more.",
    "Nobody stands on a ledger, and it stays until the courses on it have set.",
  ],
});
