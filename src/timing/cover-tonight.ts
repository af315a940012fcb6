import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { refuseAll } from "../core/refuse-all.js";
import { coverRules, meanDaily, topCover } from "../data/cover.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { clockField, zoneField } from "./clock-field.js";
import { type Clock, clockAfter, clockText, readClock, troublesIn } from "./clock.js";
import { type Cover, coverByMean, type CoverRule } from "./cover-by-mean.js";
import { type DayMean, dayMeans, type MeanBy } from "./day-means.js";
import { airRecordInput } from "./record-input.js";
import { say } from "./refusals.js";

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

const temperature = (says: string): ReturnType<typeof quantityField<"temperature">> => quantityField("temperature", { says, atLeast: "-60 degF", atMost: "140 degF" });

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    workEnds: clockField("when the work ends"),
    zone: zoneField(),
    record: z.optional(telling("record or forecast of the air", airRecordInput())),
    lowAndHigh: z.optional(telling("low and high of the air after the work ends", z.strictObject({ low: temperature("lowest temperature of the 24 h after the work ends"), high: temperature("highest temperature of the 24 h after the work ends") }))),
    rule: telling("rule by which fresh work is protected", z.enum(["MSJC 1999", "BIA Technical Note 1", "Beall 2004"])),
    meanBy: telling("how the mean of the day is taken", z.enum(["mean of the hours", "mean of low and high"])),
  }));

/**
 * How completed masonry is covered tonight and until when, by a rule and a mean of the day that are named; both change the
 * answer, so what the others on file ask is told beside it. The mean is that of the 24 h after the work ends, from a record or
 * forecast by the hour, or from a low and a high alone.
 *
 * @example
 * ```ts
 * const readings = Array.from({ length: 24 }, (_, hour) => ({ at: `2026-11-02T${String(hour).padStart(2, "0")}:00-06:00`, temperature: hour < 12 ? "30 degF" : "36 degF" }));
 * const tonight = coverTonight({ workEnds: "2026-11-02T00:00-06:00", record: { every: "1 h", readings }, rule: "MSJC 1999", meanBy: "mean of the hours" });
 * tonight.mean.toString(); // "33 degF"
 * tonight.method; // "cover with a weather-resistive membrane"
 * tonight.until; // "2026-11-03T00:00-06:00"
 * const forecast = { low: "27 degF", high: "43 degF" } as const;
 * coverTonight({ workEnds: "2026-11-02T17:00-06:00", lowAndHigh: forecast, rule: "MSJC 1999", meanBy: "mean of low and high" }).mean.toString(); // "35 degF"
 * ```
 */
export const coverTonight = /* @__PURE__ */ composed({
  id: "timing.cover-tonight",
  title: "Cover of completed masonry tonight",
  cautions: [
    "The rule is that of the edition the job is under and of the local code, which come first. A night below freezing may follow a mild day: look at the lowest hour as well.",
    "A heater that burns fuel under a cover gives off carbon monoxide and may set it on fire: who answers for it says which, with what fresh air, and who watches it.",
    "Grouted masonry goes by the lowest temperature of 48 h and not by the mean; adhered veneer has no grout.",
  ],
  reads: /* @__PURE__ */ nested(input),
  run: ({ workEnds, zone, record, lowAndHigh, rule, meanBy }, work): CoverTonight => {
    const ends = readClock(workEnds, { path: ["workEnds"], says: "when the work ends", zone: zone ?? record?.zone });
    refuseAll(troublesIn([ends]), work);
    const end = ends as Clock;
    const known = dayMeans(end, { record, lowAndHigh }, work);
    const asked = (by: CoverRule, { meanBy: way, mean }: DayMean): CoverAsked => {
      const cover = coverByMean(by, mean);
      const until = cover.lasts === undefined ? {} : { until: clockText(clockAfter(end, cover.lasts, "up")) };
      return { rule: by, meanBy: way, mean, ...cover, ...until };
    };
    work.stand(coverRules[rule].basis);
    work.stand(meanDaily);
    work.stand(topCover);
    const own = known.find((one) => one.meanBy === meanBy);
    if (own === undefined) return work.refuse({ code: "refused", path: ["meanBy"], given: meanBy, wanted: say("lowAndHighHaveNoMean") });
    const chosen = asked(rule, own);
    const all = (Object.keys(coverRules) as CoverRule[]).flatMap((by) => known.map((one) => asked(by, one)));
    const others = all.filter((other) => other.method !== chosen.method || other.until !== chosen.until);
    if (chosen.band === "not on file") work.caution("The rule that was named is not on file for such a mean: no cover and no end of it is told.");
    return { ...chosen, topLap: quantity("length", "2 ft"), others };
  },
});
