import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { nested } from "../schema/nested.js";
import { daysBetween } from "../timing/clock.js";
import { dayRows, type DayRow } from "./day-rows.js";
import { say } from "./refusals.js";
import { weatherDaysInput, type WeatherDaysRead } from "./weather-days-input.js";

/** One day, and what the weather makes of it. */
export interface WeatherDay {
  readonly date: string;
  /** Lowest and highest temperature of the shift. */
  readonly low: Quantity<"temperature">;
  readonly high: Quantity<"temperature">;
  readonly state: "work" | "heated" | "lost";
  readonly why: string;
}

/** Days that the weather takes, and days that must be heated or protected: two figures, paid from different pockets. */
export interface WeatherDays {
  readonly lostDays: Quantity<"count">;
  readonly heatedDays: Quantity<"count">;
  readonly workDays: Quantity<"count">;
  readonly days: readonly WeatherDay[];
}

/**
 * Days lost to the weather, and days that must be heated or protected, told apart: lost where any hour of the shift is beyond
 * what the crew works in; heated where the shift, or the time that fresh work is protected after it, has an hour of cold, or
 * where protection of the day before runs into the shift.
 *
 * @example
 * ```ts
 * const winter = weatherDays({
 *   shift: { from: "07:00", until: "15:30" }, stopBelow: "25 degF", heatBelow: "40 degF", protection: "24 h",
 *   days: [{ date: "2026-12-01", low: "41 degF", high: "50 degF" }, { date: "2026-12-02", low: "30 degF", high: "38 degF" }, { date: "2026-12-03", low: "20 degF", high: "31 degF" }],
 * });
 * winter.lostDays.toString(); // "1"
 * winter.heatedDays.toString(); // "1"
 * ```
 */
export const weatherDays = /* @__PURE__ */ composed({
  id: "weather.weather-days",
  title: "Days lost to weather and days heated",
  cautions: ["From a record or from normals, so an expectation and no promise: bad winters take more."],
  reads: /* @__PURE__ */ nested(weatherDaysInput),
  run: (given, work): WeatherDays => {
    const { stopBelow, heatBelow } = given;
    if (compare(heatBelow, stopBelow) < 0) work.refuse({ code: "tooLow", path: ["heatBelow"], given: heatBelow.toString(), wanted: say("heatBelowStop", { stopBelow }) });
    const days = dayRows(given, work).reduce<readonly Judged[]>((before, row) => [...before, { row, ...judge(row, before.at(-1), given) }], []);
    const count = (which: WeatherDay["state"]): Quantity<"count"> => times(quantity("count", 1), days.filter(({ state }) => state === which).length);
    return {
      lostDays: count("lost"), heatedDays: count("heated"), workDays: count("work"),
      days: days.map(({ row: { day, low, high }, state, why }) => ({ date: day.toString(), low, high, state, why })),
    };
  },
});

/** A day, and what was made of it. */
interface Judged extends Pick<WeatherDay, "state" | "why"> {
  readonly row: DayRow;
}

const carriedOver = "protection of the day before runs into the shift";

function judge({ day, low, high, lowWithProtection }: DayRow, before: Judged | undefined, { stopBelow, stopAbove, heatBelow }: WeatherDaysRead): Omit<Judged, "row"> {
  if (compare(low, stopBelow) < 0) return { state: "lost", why: `an hour of the shift is below ${stopBelow.toString()}` };
  if (stopAbove !== undefined && compare(high, stopAbove) > 0) return { state: "lost", why: `an hour of the shift is above ${stopAbove.toString()}` };
  if (compare(lowWithProtection, heatBelow) < 0) return { state: "heated", why: `the shift or the protection after it has an hour below ${heatBelow.toString()}` };
  const carried = before?.state === "heated" && before.why !== carriedOver && before.row.protectsNextShift && daysBetween(before.row.day, day) === 1;
  return carried ? { state: "heated", why: carriedOver } : { state: "work", why: "within what the crew works in without heat" };
}
