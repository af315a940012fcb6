import type { EquivalentAge } from "../timing/equivalent-age.js";
import type { WorkWindows } from "../timing/work-windows.js";
import type { MasonryWeather } from "../weather/masonry-weather.js";
import { type ClockTime, clockOf, clockTime } from "./clock-axis.js";
import { say } from "./refusals.js";
import { answersOf, having, listOf, type Look, maybe, measured, plain, refuse } from "./results.js";

/** What a chart of temperatures is drawn from. */
export interface TemperatureRecord {
  /** The answers of `masonryWeather`. */
  readonly weather: MasonryWeather;
  /** The answers of `equivalentAge` over a record by the clock. */
  readonly age?: EquivalentAge;
  /** The answers of `workWindows`. */
  readonly holds?: WorkWindows;
}

/** A stretch of time with one temperature. */
export interface Spell {
  readonly from: ClockTime;
  /** When it ends, in milliseconds. */
  readonly until: number;
  readonly degrees: number;
}

/** An hour of the record, with the band it lies in. */
export interface BandSpell extends Spell {
  readonly band: string;
  readonly stops: boolean;
}

/** A stretch of the age: its temperature, and the age at its end. */
export interface AgeSpell extends Spell {
  readonly hours: number;
}

/** What a chart of temperatures is drawn from, looked at. */
export const drawnRecord = /* @__PURE__ */ ((): Look => {
  const hour = having({ at: clockTime, temperature: measured("temperature"), band: plain("string"), stops: plain("boolean") });
  const interval = having({ from: clockTime, lasts: measured("time"), temperature: measured("temperature"), total: measured("time") }, say("giveIntervals"));
  const window = having({ work: plain("string"), done: clockTime, earliest: maybe(clockTime), typical: maybe(clockTime), latest: maybe(clockTime), test: plain("string") });
  return having({
    weather: answersOf("masonryWeather", { ruleSet: plain("string"), hours: listOf(hour, 2), firstStop: maybe(clockTime) }),
    age: maybe(answersOf("equivalentAge", { rule: plain("string"), reference: measured("temperature"), age: measured("time"), elapsed: measured("time"), intervals: listOf(interval, 1) })),
    holds: maybe(answersOf("workWindows", { windows: listOf(window, 1) })),
  });
})();

/** The unit a record is read in. */
export type DegreeUnit = "degF" | "degC";

/** The unit of the first reading, which all of a record have. */
export function degreesOf({ hours: [first] }: MasonryWeather): DegreeUnit {
  return first?.temperature.unit === "degF" ? "degF" : "degC";
}

/** The hours of the record; each stands for the time until the next, the last for as long as the one before it. */
export function bandSpells(id: string, { hours }: MasonryWeather, unit: DegreeUnit): readonly BandSpell[] {
  const clocks = hours.map(({ at }) => clockOf(at));
  const unordered = clocks.findIndex(({ at }, index) => at <= (clocks[index - 1]?.at ?? Number.NEGATIVE_INFINITY));
  if (unordered >= 0) refuse(id, ["weather", "hours", unordered, "at"], hours[unordered]?.at ?? "", say("hoursInOrder"));
  return hours.map(({ temperature, band, stops }, index): BandSpell => {
    const from = clocks[index] as ClockTime;
    const before = clocks[index - 1];
    const until = clocks[index + 1]?.at ?? 2 * from.at - (before?.at ?? from.at);
    return { from, until, degrees: temperature.toNumber(unit), band, stops };
  });
}

/** The intervals of an age. */
export function ageSpells({ intervals }: EquivalentAge, unit: DegreeUnit): readonly AgeSpell[] {
  return intervals.map(({ from, lasts, temperature, total }) => {
    const begins = clockOf(from ?? "");
    return { from: begins, until: begins.at + lasts.toNumber("h") * 3_600_000, degrees: temperature.toNumber(unit), hours: total.toNumber("h") };
  });
}
