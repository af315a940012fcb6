import { composed } from "../core/composed.js";
import { batchVolume } from "./batch-volume.js";
import { mixingWater } from "./mixing-water.js";

/**
 * A plan of batches: how much to mix at a time for this crew at this temperature, the water for it, and how many batches.
 *
 * @example
 * ```ts
 * const plan = batchSize({
 *   life: "2 h", slake: "20 min", carry: "10 min", margin: "30 min", placingRate: "24 ft2/h", thickness: "1/2 in",
 *   mixerHolds: "3/4 ft3", volume: "12 ft3", bagYield: "0.5 ft3", bagMass: "50 lb", waterLow: "5 qt", waterHigh: "6 qt",
 * });
 * plan.governedBy; // "mixer"
 * plan.dryMass.toString(); // "75 lb"
 * plan.firstPour.toString(); // "7.5 qt"
 * plan.batches.toString(); // "16"
 * ```
 */
export const batchSize = /* @__PURE__ */ composed({
  id: "mortar.batch-size",
  title: "Plan of batches",
  given: {
    life: { is: "time", unit: "min", symbol: "T", says: "life of the mortar from the first water, at the temperature it is used at", above: 0 },
    slake: { is: "time", unit: "min", symbol: "T_s", says: "from the first water until it may be used: mixing, slaking, mixing again", atLeast: 0 },
    carry: { is: "time", unit: "min", symbol: "T_c", says: "time to carry the batch to the wall", atLeast: 0 },
    margin: { is: "time", unit: "min", symbol: "T_m", says: "time to spare, for what holds the crew up", atLeast: 0 },
    placingRate: { is: "areaPerTime", unit: ["ft2/h", "m2/h"], symbol: "R", says: "face set in an hour by all setters this mixer feeds", above: 0 },
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "bed and back-butter together, over the whole face", above: 0 },
    mixerHolds: { is: "volume", unit: ["ft3", "L"], symbol: "V_x", says: "most mortar the mixer or pail can mix at once", above: 0 },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar to be mixed in all, with waste", above: 0 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
    bagMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_b", says: "dry mix in a full bag", above: 0 },
    waterLow: { is: "volume", unit: ["qt", "L"], symbol: "W_l", says: "least water for a full bag, from the bag", above: 0 },
    waterHigh: { is: "volume", unit: ["qt", "L"], symbol: "W_h", says: "most water for a full bag, from the bag", above: 0 },
  },
  run: ({ waterLow, waterHigh, ...rest }, work) => {
    const { steps, answers } = work.part(batchVolume, rest);
    const { batch, areaPerBatch, dryMass, batches, placingTime } = answers;
    const { firstPour, holdBack, most } = work.part(mixingWater, { dryMass, bagMass: rest.bagMass, waterLow, waterHigh }).answers;
    const governedBy = steps.some((step) => step.governedBy === "crewPlaces") ? "crew" : "mixer";
    return { governedBy, placingTime, batch, areaPerBatch, dryMass, firstPour, holdBack, most, batches };
  },
});
