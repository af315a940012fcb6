import * as z from "zod/mini";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { tms602Cold, tms602FromMemory, tms602Hot, ukFrost, ukHeat } from "../data/weather.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { clockField } from "../timing/clock-field.js";
import { clockText } from "../timing/clock.js";
import { type CoverTonight, coverTonight } from "../timing/cover-tonight.js";
import { airRecordInput } from "../timing/record-input.js";
import { type Reading, readReadings } from "../timing/record.js";
import { say } from "./refusals.js";
import { type Asked, type Band, type Hour, tmsAsks, tmsBand } from "./tms-bands.js";
import { ukAsks, ukState } from "./uk-state.js";

/** One hour of the record and the band it lies in. */
export interface MasonryHour {
  readonly at: string;
  readonly temperature: Quantity<"temperature">;
  readonly band: string;
  readonly stops: boolean;
}

/** What the weather of a record means for masonry, by a rule set that is named. */
export interface MasonryWeather {
  readonly ruleSet: "TMS 602-02" | "UK warranty standards 2023";
  /** The first hour of the record. */
  readonly now: MasonryHour;
  /** What the rule asks now, and where it says so. */
  readonly asks: readonly Asked[];
  /** The coldest hour that is in a band of cold, and the hottest in a band of heat; absent where there is none. */
  readonly worstCold?: MasonryHour;
  readonly worstHot?: MasonryHour;
  /** All that the worst hours ask. */
  readonly asksAhead: readonly Asked[];
  /** The first hour in which work stops; absent where there is none. */
  readonly firstStop?: string;
  /** How what is laid is covered and until when; absent where the end of the work was not given. */
  readonly protection?: CoverTonight;
  readonly hours: readonly MasonryHour[];
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    ruleSet: telling("set of rules for the weather", z.enum(["TMS 602-02", "UK warranty standards 2023"])),
    record: telling("record or forecast of the air", airRecordInput()),
    stopBelow: z.optional(quantityField("temperature", { says: "temperature of the air below which this crew sets nothing", atLeast: "-20 degF", atMost: "50 degF" })),
    protect: z.optional(
      telling("protection after the work ends", z.strictObject({
        workEnds: clockField("when the work ends"),
        rule: telling("rule by which fresh work is protected", z.enum(["MSJC 1999", "BIA Technical Note 1", "Beall 2004"])),
        meanBy: telling("how the mean of the day is taken", z.enum(["mean of the hours", "mean of low and high"])),
      })),
    ),
  }));

/**
 * The bands of cold and heat a record or forecast runs through, by a rule set and edition that are named: what it asks now and
 * ahead, the first hour in which work stops, and the protection of what is laid. TMS 602 has no temperature at which work
 * stops, so the crew's own is asked for; the rule of the United Kingdom has.
 *
 * @example
 * ```ts
 * const forecast = masonryWeather({
 *   ruleSet: "TMS 602-02", stopBelow: "25 degF",
 *   record: { zone: "America/Chicago", every: "1 h", readings: [
 *     { at: "2026-11-02T14:00", temperature: "41 degF" }, { at: "2026-11-02T15:00", temperature: "39.9 degF" }, { at: "2026-11-02T16:00", temperature: "24 degF" },
 *   ] },
 * });
 * forecast.now.band; // "normal"
 * forecast.worstCold.band; // "cold, 20 to 25 degF"
 * forecast.firstStop; // "2026-11-02T16:00-06:00[America/Chicago]"
 * ```
 */
export const masonryWeather = /* @__PURE__ */ composed({
  id: "weather.masonry-weather",
  title: "Weather bands for masonry",
  cautions: [
    "For planning, from a forecast: what the edition of the job, the local code and the data sheet say comes first. Read air and wall on the spot.",
    "Lay nothing on a frozen or frosted face, whatever the band.",
  ],
  reads: /* @__PURE__ */ nested(input),
  run: ({ ruleSet, record, stopBelow, protect }, work): MasonryWeather => {
    const readings = readReadings(record, work, ["record"]);
    const temperatures = readings.map(({ temperature }) => temperature);
    const tms = ruleSet === "TMS 602-02";
    if (tms === (stopBelow === undefined)) {
      work.refuse({ code: tms ? "missing" : "refused", path: ["stopBelow"], given: "", wanted: say(tms ? "noStopInRule" : "ruleStopsItself") });
    }
    const bands = tms ? readings.map((hour, index) => tmsBandOf(hour, index, work)) : readings.map((_, index) => ukState(temperatures, index));
    const hours = readings.map(({ at, temperature }, index): MasonryHour => {
      const { band, side, step } = bands[index] as Band;
      const stops = stopBelow === undefined ? side === "cold" && step > 1 : compare(temperature, stopBelow) < 0;
      return { at: clockText(at), temperature, band, stops };
    });
    const [cold, hot] = [worst(bands, readings, "cold"), worst(bands, readings, "hot")];
    const asksOf = (index: number | undefined): readonly Asked[] => (index === undefined ? [] : (tms ? tmsAsks : ukAsks)(bands[index] as Band));
    for (const basis of tms ? [tms602Cold, tms602Hot, tms602FromMemory] : [ukFrost, ukHeat]) work.stand(basis);
    if (tms) work.caution("Of the cold bands of TMS 602 only that from 20 to 25 degF was read; what the others ask is from memory, and says so.");
    const at = (index: number | undefined): MasonryHour | undefined => (index === undefined ? undefined : hours[index]);
    const [coldest, hottest, firstStop] = [at(cold), at(hot), hours.find(({ stops }) => stops)?.at];
    return {
      ruleSet, now: hours[0] as MasonryHour, asks: asksOf(0),
      ...(coldest === undefined ? {} : { worstCold: coldest }), ...(hottest === undefined ? {} : { worstHot: hottest }),
      asksAhead: [...asksOf(cold), ...asksOf(hot)], ...(firstStop === undefined ? {} : { firstStop }),
      ...(protect === undefined ? {} : { protection: work.part(coverTonight, { ...protect, record: unread(record) }, ["protect"]).answers }), hours,
    };
  },
});

function tmsBandOf(hour: Reading<Hour & { readonly at: string }>, index: number, work: Work): Band {
  const band = tmsBand(hour);
  if (band !== "wind wanted") return band;
  return work.refuse({ code: "missing", path: ["record", "readings", index, "wind"], given: "", wanted: say("turnsOnTheWind", { temperature: hour.temperature }) });
}

/** Which hour is farthest out on a side: the coldest, or the hottest; of equals the first. */
function worst(bands: readonly Band[], readings: readonly Hour[], side: "cold" | "hot"): number | undefined {
  const there = readings.map(({ temperature }, index) => ({ ...(bands[index] as Band), temperature, index })).filter((hour) => hour.side === side);
  const [first, ...rest] = there;
  const farther = (one: (typeof there)[number], other: (typeof there)[number]): boolean => {
    if (one.step !== other.step) return other.step > one.step;
    return side === "cold" ? compare(other.temperature, one.temperature) < 0 : compare(other.temperature, one.temperature) > 0;
  };
  return first === undefined ? undefined : rest.reduce((one, other) => (farther(one, other) ? other : one), first).index;
}

/** A record that has been read, as it may be handed on. */
function unread({ zone, every, readings }: z.output<ReturnType<typeof airRecordInput>>): z.input<ReturnType<typeof airRecordInput>> {
  return { every, readings: readings.map(({ wind, ...reading }) => ({ ...reading, ...(wind === undefined ? {} : { wind }) })), ...(zone === undefined ? {} : { zone }) };
}
