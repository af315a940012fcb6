import * as z from "zod/mini";
import { refuseAll } from "../boards/refuse-all.js";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { coverRules, meanDaily, topCover } from "../data/weather.js";
import { nested } from "../schema/nested.js";
import { clockField } from "./clock-field.js";
import { type Clock, clockAfter, clockText, isBefore, readClock, timeBetween, troublesIn } from "./clock.js";
import { type Cover, coverByMean, type CoverRule } from "./cover-by-mean.js";
import { meanOfReadings } from "./mean-of-readings.js";
import { meanOfTwo } from "./mean-of-two.js";
import { airRecordInput, type AirRecordRead } from "./record-input.js";
import { readReadings } from "./record.js";

/** How the mean of a day is taken. */
export type MeanBy = "mean of the hours" | "mean of low and high";

/** What a rule asks for the masonry laid today. */
export interface CoverAsked extends Cover {
  readonly rule: CoverRule;
  readonly meanBy: MeanBy;
  readonly mean: Quantity<"temperature">;
  /** Until when; absent where nothing is asked or nothing is on file. */
  readonly until?: string;
}

/** How to cover what was laid today, and until when. */
export interface CoverTonight extends CoverAsked {
  /** How far the cover over the top laps down each side. */
  readonly topLap: Quantity<"length">;
  /** What other rules, and the other mean, ask where that is not the same. */
  readonly others: readonly CoverAsked[];
}

const means = ["mean of the hours", "mean of low and high"] as const satisfies readonly MeanBy[];

const input = /* @__PURE__ */ (() =>
  z.strictObject({
    workEnds: clockField("when the work ends"),
    record: airRecordInput,
    rule: z.enum(["MSJC 1999", "BIA Technical Note 1", "Beall 2004"]),
    meanBy: z.enum(means),
  }))();

/**
 * How completed masonry is covered tonight and until when, by a rule and a mean of the day that are named; both change the
 * answer, so what the others on file ask is told beside it. The mean is that of the 24 h after the work ends.
 *
 * @example
 * ```ts
 * const readings = Array.from({ length: 24 }, (_, hour) => ({ at: `2026-11-02T${String(hour).padStart(2, "0")}:00-06:00`, temperature: hour < 12 ? "30 degF" : "36 degF" }));
 * const tonight = coverTonight({ workEnds: "2026-11-02T00:00-06:00", record: { every: "1 h", readings }, rule: "MSJC 1999", meanBy: "mean of the hours" });
 * tonight.mean.toString(); // "33 degF"
 * tonight.method; // "cover with a weather-resistive membrane"
 * tonight.until; // "2026-11-03T00:00-06:00"
 * ```
 */
export const coverTonight = /* @__PURE__ */ composed({
  id: "timing.cover-tonight",
  title: "Cover of completed masonry tonight",
  cautions: [
    "The rule is that of the edition the job is under and of the local code, which come first. A night below freezing may follow a mild day: look at the lowest hour as well.",
    "Grouted masonry goes by the lowest temperature of 48 h and not by the mean; adhered veneer has no grout.",
  ],
  reads: /* @__PURE__ */ nested(input),
  run: ({ workEnds, record, rule, meanBy }, work): CoverTonight => {
    const ends = readClock(workEnds, { path: ["workEnds"], says: "when the work ends", zone: record.zone });
    refuseAll(troublesIn([ends]), work);
    const end = ends as Clock;
    const mean = meansOf(end, record, work);
    const asked = (by: CoverRule, means: MeanBy): CoverAsked => {
      const cover = coverByMean(by, mean[means]);
      const until = cover.lasts === undefined ? {} : { until: clockText(clockAfter(end, cover.lasts, "up")) };
      return { rule: by, meanBy: means, mean: mean[means], ...cover, ...until };
    };
    work.stand(coverRules[rule].basis);
    work.stand(meanDaily);
    work.stand(topCover);
    const chosen = asked(rule, meanBy);
    const all = (Object.keys(coverRules) as CoverRule[]).flatMap((by) => means.map((way) => asked(by, way)));
    const others = all.filter((other) => other.method !== chosen.method || other.until !== chosen.until);
    if (chosen.band === "not on file") work.caution("The rule that was named is not on file for such a mean: no cover and no end of it is told.");
    return { ...chosen, topLap: quantity("length", "2 ft"), others };
  },
});

/** Both means of the 24 h after the work ends; refused where the record does not cover them. */
function meansOf(end: Clock, record: AirRecordRead, work: Work): Readonly<Record<MeanBy, Quantity<"temperature">>> {
  const day = quantity("time", "24 h");
  const readings = readReadings(record, work, ["record"]);
  const within = readings.filter(({ at }) => !isBefore(at, end) && compare(timeBetween(end, at), day) < 0);
  const [first, last] = [readings[0], readings.at(-1)];
  const begins = first !== undefined && !isBefore(end, first.at);
  const covers = last !== undefined && compare(sum([timeBetween(end, last.at), record.every]), day) >= 0;
  if (!begins || !covers || within.length === 0) work.refuse({ code: "refused", path: ["record"], given: `${String(within.length)} readings after ${clockText(end)}`, wanted: "it must cover the 24 h after the work ends" });
  const temperatures = within.map(({ temperature }) => temperature);
  const [low, high] = [temperatures.reduce((a, b) => (compare(a, b) <= 0 ? a : b)), temperatures.reduce((a, b) => (compare(a, b) >= 0 ? a : b))];
  return { "mean of the hours": meanOfReadings(temperatures), "mean of low and high": work.part(meanOfTwo, { one: low, other: high }).answers.mean };
}
