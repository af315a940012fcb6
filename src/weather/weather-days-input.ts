import * as z from "zod/mini";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { dayField, timeOfDayField } from "../timing/clock-field.js";
import { airRecordInput } from "../timing/record-input.js";

const temperature = (says: string): ReturnType<typeof quantityField<"temperature">> => quantityField("temperature", { says, atLeast: "-60 degF", atMost: "140 degF" });

/** A record by the clock, or the low and high of each shift, and what the crew works in. */
export const weatherDaysInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    shift: telling("shift of the crew", z.strictObject({ from: timeOfDayField("beginning of the shift"), until: timeOfDayField("end of the shift") })),
    stopBelow: temperature("temperature of the air below which this crew sets nothing"),
    stopAbove: z.optional(temperature("temperature of the air above which this crew sets nothing")),
    heatBelow: temperature("temperature of the air below which the rule of the job asks for heat or cover"),
    protection: quantityField("time", { says: "how long fresh work is protected after the shift", atLeast: 0, atMost: "7 d" }),
    record: z.optional(telling("record or forecast of the air", airRecordInput())),
    days: z.optional(readOnly(telling("days, each with its low and high", z.array(z.strictObject({ date: dayField("the day"), low: temperature("lowest temperature of the shift"), high: temperature("highest temperature of the shift") }))))),
  }));

/** The input as it has been read. */
export type WeatherDaysRead = z.output<ReturnType<typeof weatherDaysInput>>;
