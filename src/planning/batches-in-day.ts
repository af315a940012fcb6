import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Batches to mix on a day, for its share of the labour; what is left of a batch is not kept over night, so each day is
 * rounded up by itself.
 *
 * @example
 * ```ts
 * batchesInDay({ volume: "12 ft3", labourToday: "21 h", labour: "63 h", batch: "0.75 ft3" }).batches.toString(); // "6"
 * ```
 */
export const batchesInDay = /* @__PURE__ */ calculation({
  id: "planning.batches-in-day",
  title: "Batches on a day",
  given: {
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar to be mixed in all, with waste", above: 0 },
    labourToday: { is: "time", unit: "h", symbol: "T_d", says: "labour done on this day", above: 0 },
    labour: { is: "time", unit: "h", symbol: "T_l", says: "labour in all", above: 0 },
    batch: { is: "volume", unit: ["ft3", "L"], symbol: "V_b", says: "mortar in the largest batch", above: 0 },
  },
  steps: {
    volumeToday: { is: "volume", unit: ["ft3", "L"], symbol: "V_d", says: "mortar for this day", formula: "volume * labourToday / labour", basis: arithmetic },
    batches: { is: "count", symbol: "n", says: "batches, the last one in part", formula: "ceil(volumeToday / batch)", basis: arithmetic },
  },
});
