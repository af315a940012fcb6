import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * The largest batch that a crew can place while it is good: what is left of its life after slaking and carrying, at the
 * rate of the crew, and no more than the mixer holds.
 *
 * @example
 * ```ts
 * const batch = batchVolume({
 *   life: "2 h", slake: "20 min", carry: "10 min", margin: "30 min", placingRate: "24 ft2/h", thickness: "1/2 in",
 *   mixerHolds: "2 ft3", volume: "12 ft3", bagYield: "0.5 ft3", bagMass: "50 lb",
 * });
 * batch.batch.toString(); // "1 ft3"
 * batch.dryMass.toString(); // "100 lb"
 * batch.batches.toString(); // "12"
 * ```
 */
export const batchVolume = /* @__PURE__ */ calculation({
  id: "mortar.batch-volume",
  title: "Largest batch that can be placed in time",
  given: {
    life: { is: "time", unit: "min", symbol: "T", says: "life of the mortar from the first water, at the temperature it is used at", above: 0 },
    slake: { is: "time", unit: "min", symbol: "T_s", says: "from first water until it may be used", atLeast: 0 },
    carry: { is: "time", unit: "min", symbol: "T_c", says: "time to carry the batch to the wall", atLeast: 0 },
    margin: { is: "time", unit: "min", symbol: "T_m", says: "time to spare", atLeast: 0 },
    placingRate: { is: "areaPerTime", unit: ["ft2/h", "m2/h"], symbol: "R", says: "face set in an hour by all setters this mixer feeds", above: 0 },
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "bed and back-butter together, over the whole face", above: 0 },
    mixerHolds: { is: "volume", unit: ["ft3", "L"], symbol: "V_x", says: "most the mixer mixes at once", above: 0 },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar to be mixed in all, with waste", above: 0 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
    bagMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_b", says: "dry mix in a full bag", above: 0 },
  },
  steps: {
    placingTime: { is: "time", unit: "min", symbol: "T_p", says: "time left to place the batch", formula: "life - slake - carry - margin", basis: arithmetic, above: 0 },
    crewPlaces: { is: "volume", unit: ["ft3", "L"], symbol: "V_p", says: "mortar the crew places in this time", formula: "placingRate * placingTime * thickness", basis: geometry },
    batch: { is: "volume", unit: ["ft3", "L"], symbol: "V_b", says: "mortar in the largest batch", formula: "min(crewPlaces, mixerHolds)", basis: arithmetic },
    areaPerBatch: { is: "area", unit: ["ft2", "m2"], symbol: "A_b", says: "face that one batch sets", formula: "batch / thickness", basis: geometry },
    dryMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "dry mix in the largest batch", formula: "batch / bagYield * bagMass", basis: arithmetic },
    batches: { is: "count", symbol: "n", says: "batches in all, the last one in part", formula: "ceil(volume / batch)", basis: arithmetic },
  },
  cautions: [
    "A planning figure: the life on the data sheet and the feel of the mortar go before it. Heat, sun and wind shorten the life; test before the clock.",
    "Nothing starts the life again.",
  ],
});
