import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { clockField, zoneField } from "./clock-field.js";

/** A record or a forecast of temperatures by the clock, one reading every so often without a gap. */
export const recordInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    zone: zoneField(),
    every: quantityField("time", { says: "time from one reading to the next", above: 0, atMost: "24 h" }),
    readingIs: telling("whether a reading is of the moment or the mean until the next", z.enum(["momentary", "mean until the next"])),
    readings: readOnly(telling("readings, one after the other", z.array(z.strictObject({ at: clockField("time of the reading"), temperature: quantityField("temperature", { says: "temperature read", atLeast: "-60 degF", atMost: "212 degF" }) })))),
  }));

/** A record or a forecast of the air by the clock: each reading stands for the time until the next. */
export const airRecordInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    zone: zoneField(),
    every: quantityField("time", { says: "time from one reading to the next", above: 0, atMost: "24 h" }),
    readings: readOnly(
      telling("readings, one after the other", z.array(
        z.strictObject({
          at: clockField("time of the reading"),
          temperature: quantityField("temperature", { says: "temperature of the air", atLeast: "-60 degF", atMost: "140 degF" }),
          wind: z.optional(quantityField("speed", { says: "wind", atLeast: 0, atMost: "150 mph" })),
        }),
      )),
    ),
  }));

/** A history without a clock: how long at which mean temperature, one after the other. */
export const intervalsInput = /* @__PURE__ */ atFirstUse(() =>
  readOnly(
    z.array(
      z.strictObject({
        lasts: quantityField("time", { says: "how long the interval lasts", above: 0, atMost: "3660 d" }),
        temperature: quantityField("temperature", { says: "mean temperature in it", atLeast: "-60 degF", atMost: "212 degF" }),
      }),
    ),
  ));

/** A rule by which warmth makes things go faster, with what it needs. */
export const ageRuleInput = /* @__PURE__ */ atFirstUse(() => ({
  rule: telling("rule by which warmth makes things go faster", z.enum(["doubling", "Arrhenius"])),
  activation: z.optional(quantityField("temperatureDifference", { says: "activation energy over the gas constant, in kelvins; for Arrhenius alone", atLeast: "1000 K", atMost: "10000 K" })),
  reference: quantityField("temperature", { says: "temperature for which the times are known", atLeast: "32 degF", atMost: "120 degF" }),
}));

/** A record as it has been read. */
export type RecordRead = z.output<ReturnType<typeof recordInput>>;

/** A record of the air as it has been read. */
export type AirRecordRead = z.output<ReturnType<typeof airRecordInput>>;

/** A history as it has been read. */
export type IntervalsRead = z.output<ReturnType<typeof intervalsInput>>;
