import { calculation } from "../core/calculation.js";
import { statics } from "../data/basis.js";
import { standardWeight } from "../data/timing.js";

/**
 * How high courses that have not set may stand over a ledger that carries them, by its capacity.
 *
 * @example
 * ```ts
 * liftByLedger({ wetWeight: "15 lb/ft2", ledgerCapacity: "60 lbf/ft" }).height.toString(); // "4 ft"
 * ```
 */
export const liftByLedger = /* @__PURE__ */ calculation({
  id: "timing.lift-by-ledger",
  title: "Height of an uncured lift by the ledger",
  given: {
    wetWeight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "w", says: "installed wet weight of the veneer: units, bed and joints", above: 0 },
    ledgerCapacity: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "q", says: "load that a length of the ledger carries, by whoever answers for it", above: 0 },
  },
  constants: {
    poundForce: { is: "force", unit: ["lbf", "N"], symbol: "F", value: "1 lbf", says: "what a pound weighs", basis: standardWeight },
    pound: { is: "mass", unit: ["lb", "kg"], symbol: "m", value: "1 lb", says: "a pound", basis: standardWeight },
  },
  steps: {
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "height of courses that have not set", formula: "ledgerCapacity / (wetWeight * poundForce / pound)", basis: statics },
  },
});
