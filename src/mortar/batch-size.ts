import { composed } from "../core/composed.js";
import { batchLife } from "./batch-life.js";
import { batchVolume } from "./batch-volume.js";
import { mixingWater } from "./mixing-water.js";

/**
 * A plan of batches: how much to mix at a time for this crew at this temperature, the water for it, and how many batches.
 * The life is told for the temperature the mortar is used at or, by a rule that is named, comes from that of the data sheet.
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
 *
 * const hot = batchSize({
 *   lifeAtReference: "4 h", reference: "70 degF", temperature: "88 degF", rule: "doubling",
 *   slake: "20 min", carry: "10 min", margin: "30 min", placingRate: "24 ft2/h", thickness: "1/2 in",
 *   mixerHolds: "2 ft3", volume: "12 ft3", bagYield: "0.5 ft3", bagMass: "50 lb", waterLow: "5 qt", waterHigh: "6 qt",
 * });
 * hot.life.to("min").toFixed(3); // "120.000"
 * hot.rule; // "doubling"
 * ```
 */
export const batchSize = /* @__PURE__ */ composed({
  id: "mortar.batch-size",
  title: "Plan of batches",
  given: {
    life: { is: "time", unit: "min", symbol: "T", says: "life of the mortar from the first water, at the temperature it is used at", above: 0, either: "life" },
    lifeAtReference: { is: "time", unit: "min", symbol: "T_r", says: "life of the mortar from the first water, at the temperature of its data sheet", above: 0, either: "life" },
    reference: { is: "temperature", unit: ["degF", "degC"], symbol: "H_r", says: "temperature the data sheet gives the life for; with lifeAtReference alone", atLeast: "40 degF", atMost: "120 degF", optional: true },
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "H", says: "temperature of the mortar; with lifeAtReference alone", atLeast: "40 degF", atMost: "120 degF", optional: true },
    rule: { oneOf: ["doubling", "Arrhenius"], says: "rule by which warmth shortens the life; with lifeAtReference alone", optional: true },
    activation: { is: "temperatureDifference", unit: "K", symbol: "Q", says: "activation energy over the gas constant, in kelvins; for Arrhenius alone", atLeast: "1000 K", atMost: "10000 K", optional: true },
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
  run: ({ waterLow, waterHigh, life: given, lifeAtReference, reference, temperature, rule, activation, ...rest }, work) => {
    const life = batchLife({ given, lifeAtReference, reference, temperature, rule, activation }, work);
    const { steps, answers } = work.part(batchVolume, { ...rest, life });
    const { batch, areaPerBatch, dryMass, batches, placingTime } = answers;
    const { firstPour, holdBack, most } = work.part(mixingWater, { dryMass, bagMass: rest.bagMass, waterLow, waterHigh }).answers;
    const governedBy = steps.some((step) => step.governedBy === "crewPlaces") ? "crew" : "mixer";
    return { governedBy, life, ...(rule === undefined ? {} : { rule }), placingTime, batch, areaPerBatch, dryMass, firstPour, holdBack, most, batches };
  },
});
