import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { type Clock, clockText, isBefore, timeBetween } from "./clock.js";
import { meanOfReadings } from "./mean-of-readings.js";
import { meanOfTwo } from "./mean-of-two.js";
import type { AirRecordRead } from "./record-input.js";
import { readReadings } from "./record.js";
import { say } from "./refusals.js";

/** How the mean of a day is taken. */
export type MeanBy = "mean of the hours" | "mean of low and high";

/** A mean of a day, and how it was taken. */
export interface DayMean {
  readonly meanBy: MeanBy;
  readonly mean: Quantity<"temperature">;
}

/** What is known of the day: readings by the hour, or its low and high alone. */
interface DayKnown {
  readonly record?: AirRecordRead | undefined;
  readonly lowAndHigh?: { readonly low: Quantity<"temperature">; readonly high: Quantity<"temperature"> } | undefined;
}

/** The means of the 24 h after the work ends: both from a record, one from a low and a high. */
export function dayMeans(end: Clock, { record, lowAndHigh }: DayKnown, work: Work): readonly DayMean[] {
  if (record !== undefined && lowAndHigh === undefined) return meansOf(end, record, work);
  if (lowAndHigh === undefined || record !== undefined) {
    const given = record === undefined ? "" : "record and lowAndHigh";
    return work.refuse({ code: "either", path: ["weather"], given, wanted: { kind: "exactlyOne", of: ["record", "lowAndHigh"] } });
  }
  const { low, high } = lowAndHigh;
  if (compare(high, low) < 0) work.refuse({ code: "tooLow", path: ["lowAndHigh", "high"], given: high.toString(), wanted: say("highUnderLow", { low }) });
  return [{ meanBy: "mean of low and high", mean: work.part(meanOfTwo, { one: low, other: high }).answers.mean }];
}

/** Both means of the 24 h after the work ends; refused where the record does not cover them. */
function meansOf(end: Clock, record: AirRecordRead, work: Work): readonly DayMean[] {
  const day = quantity("time", "24 h");
  if (compare(record.every, quantity("time", "1 h")) > 0) {
    work.refuse({ code: "tooHigh", path: ["record", "every"], given: record.every.toString(), wanted: say("hourlyForTheMean") });
  }
  const readings = readReadings(record, work, ["record"]);
  const within = readings.filter(({ at }) => !isBefore(at, end) && compare(timeBetween(end, at), day) < 0);
  const [first, last] = [readings[0], readings.at(-1)];
  const begins = first !== undefined && !isBefore(end, first.at);
  const covers = last !== undefined && compare(sum([timeBetween(end, last.at), record.every]), day) >= 0;
  if (!begins || !covers || within.length === 0) work.refuse(refusal(["record"], say("readingsAfter", { count: within.length, time: clockText(end) }), say("mustCoverTheDay")));
  const temperatures = within.map(({ temperature }) => temperature);
  const [low, high] = [temperatures.reduce((a, b) => (compare(a, b) <= 0 ? a : b)), temperatures.reduce((a, b) => (compare(a, b) >= 0 ? a : b))];
  return [{ meanBy: "mean of the hours", mean: meanOfReadings(temperatures) }, { meanBy: "mean of low and high", mean: work.part(meanOfTwo, { one: low, other: high }).answers.mean }];
}
