import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { clockField, dayField, timeOfDayField, zoneField } from "../timing/clock-field.js";
import { airRecordInput, recordInput } from "../timing/record-input.js";
import { rateInput } from "./task.js";

const hold = (says: string): ReturnType<typeof quantityField<"time">> => quantityField("time", { says, above: 0, atMost: "366 d" });
const minutes = (says: string): ReturnType<typeof quantityField<"time">> => quantityField("time", { says, above: 0, atMost: "24 h" });

/** The wait before a stage, at the reference temperature of the plan. */
const wait = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    work: telling("work that has to wait", z.enum(["tape", "coat", "ledger", "pointing", "tooling", "uncovering", "brushing", "washing"])),
    after: z.optional(telling("stage it waits for; the one before where it is left out", z.string())),
    least: hold("least wait at the reference temperature, from the data sheet"),
    typical: z.optional(hold("usual wait at the reference temperature")),
    most: z.optional(hold("longest wait at the reference temperature, from the beginning of the stage before")),
  }));

/** Mortar mixed in batches for a stage. */
const batches = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    volume: quantityField("volume", { says: "mortar to be mixed in all, with waste", above: 0 }),
    batch: quantityField("volume", { says: "mortar in the largest batch", above: 0 }),
    mixing: minutes("time of the first mixing"),
    slakeLow: minutes("least time to slake, from the bag"),
    slakeHigh: minutes("most time to slake, from the bag"),
    remixing: minutes("time of mixing again, without water"),
    life: minutes("life of the batch at the reference temperature, from the first water"),
  }));

const stage = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    name: telling("name of the stage", z.string()),
    rate: telling("how much is to be worked on, and the rate for it", rateInput()),
    persons: z.optional(quantityField("count", { says: "persons at this stage", above: 0, atMost: 1000 })),
    inWeather: telling("whether the stage stops in bad weather", z.enum(["stops", "goes on"])),
    hold: z.optional(telling("wait before the stage", wait())),
    frostCure: z.optional(quantityField("time", { says: "age at the reference temperature at which a frost does no lasting harm", above: 0, atMost: "60 d" })),
    batches: z.optional(telling("mortar that is mixed in batches", batches())),
  }));

/** What a plan of days is made from. */
export const dayPlanInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    start: clockField("when the plan begins"),
    zone: zoneField(),
    shifts: telling("shifts of the crew", z.strictObject({
      from: timeOfDayField("beginning of the shift"),
      until: timeOfDayField("end of the shift; before the beginning where it goes over midnight"),
      breaks: quantityField("time", { says: "breaks, lunch, setting up and cleaning up in a shift", atLeast: 0, atMost: "24 h" }),
      workdays: readOnly(telling("days of the week on which there is work", z.array(z.enum(["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"])))),
      closed: z.optional(readOnly(telling("days on which nobody works", z.array(dayField("a day on which nobody works"))))),
    })),
    crew: quantityField("count", { says: "persons in the crew", above: 0, atMost: 1000 }),
    availability: quantityField("ratio", { says: "share of the crew that is there", above: 0, atMost: 1 }),
    rule: telling("rule by which warmth makes things go faster", z.enum(["doubling", "Arrhenius"])),
    activation: quantityField("temperatureDifference", { says: "activation energy over the gas constant, in kelvins; both rules are asked before a frost", atLeast: "1000 K", atMost: "10000 K" }),
    reference: quantityField("temperature", { says: "temperature for which waits and lives are known", atLeast: "40 degF", atMost: "120 degF" }),
    holdsBy: telling("whether waits are reckoned by the least or the usual", z.enum(["least", "typical"])),
    wall: telling("record of the temperature of the wall", recordInput()),
    weather: z.optional(
      telling("weather, and the rules for it", z.strictObject({
        ruleSet: telling("set of rules for the weather", z.enum(["TMS 602-02", "UK warranty standards 2023"])),
        stopBelow: z.optional(quantityField("temperature", { says: "temperature of the air below which this crew sets nothing", atLeast: "-20 degF", atMost: "50 degF" })),
        record: telling("record or forecast of the air", airRecordInput()),
      })),
    ),
    stages: readOnly(telling("stages, in their order", z.array(stage()))),
  }));

/** The input of a plan as it has been read. */
export type DayPlanRead = z.output<ReturnType<typeof dayPlanInput>>;

/** A stage as it has been read. */
export type StageRead = DayPlanRead["stages"][number];
