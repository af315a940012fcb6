import * as z from "zod/mini";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { clockField } from "../timing/clock-field.js";
import { type Clock, clockAfter, clockText, isBefore, readClock, timeBetween, troublesIn } from "../timing/clock.js";
import { airRecordInput, type AirRecordRead } from "../timing/record-input.js";
import { readReadings } from "../timing/record.js";
import { say } from "./refusals.js";
import { type SurfaceMargin, surfaceMargin } from "./surface-margin.js";

/** Whether a film may go on now, and until when it may still be laid so that it dries in time. */
export interface CoatingWeather {
  readonly decision: "go" | "wait";
  /** Every reason to wait; none where the decision is go. */
  readonly why: readonly string[];
  readonly margin: SurfaceMargin;
  /** When the forecast first falls below what the film must not feel before it is dry; absent where it does not. */
  readonly fallsAt?: string;
  /** The last time to lay a film that is dry before the fall or the end of the forecast; absent where it has passed. */
  readonly lastStart?: string;
  /** Time until then. */
  readonly left?: Quantity<"time">;
}

const temperature = (says: string): ReturnType<typeof quantityField<"temperature">> => quantityField("temperature", { says, atLeast: "-4 degF", atMost: "140 degF" });

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    start: clockField("when the coat begins"),
    surfaceTemperature: quantityField("temperature", { says: "temperature of the surface itself", atLeast: "-4 degF", atMost: "200 degF" }),
    airTemperature: temperature("temperature of the air at the wall"),
    humidity: quantityField("ratio", { says: "relative humidity of the air, over water", atLeast: "1 %", atMost: "100 %" }),
    rule: telling("least distance of the surface from the dew point", z.enum(["5 degF", "3 degC"])),
    least: temperature("lowest temperature of air and surface, from the data sheet"),
    most: temperature("highest temperature of air and surface, from the data sheet"),
    mostHumidity: quantityField("ratio", { says: "highest humidity of the air, from the data sheet", above: 0, atMost: "100 %" }),
    notBelow: temperature("temperature the air must not fall below before the film is dry"),
    dry: quantityField("time", { says: "time until the film is dry, at these temperatures", above: 0, atMost: "14 d" }),
    forecast: telling("forecast of the air", airRecordInput()),
  }));

/**
 * Whether a film may go on now: surface over the dew point, air and surface within the data sheet, humidity, and no fall of
 * the forecast below a limit before the film is dry; and how long it may still be laid.
 *
 * @example
 * ```ts
 * const readings = ["60 degF", "62 degF", "55 degF", "45 degF", "39 degF"].map((temperature, index) => ({ at: `2026-10-05T${String(10 + 2 * index)}:00`, temperature }));
 * const now = coatingWeather({
 *   start: "2026-10-05T10:00", surfaceTemperature: "63 degF", airTemperature: "60 degF", humidity: "65 %", rule: "5 degF",
 *   least: "45 degF", most: "90 degF", mostHumidity: "85 %", notBelow: "40 degF", dry: "6 h", forecast: { zone: "America/Chicago", every: "2 h", readings },
 * });
 * now.decision; // "go"
 * now.fallsAt; // "2026-10-05T18:00-05:00[America/Chicago]"
 * now.lastStart; // "2026-10-05T12:00-05:00[America/Chicago]"
 * ```
 */
export const coatingWeather = /* @__PURE__ */ composed({
  id: "weather.coating-weather",
  title: "Weather for a coat",
  cautions: ["Rain, fog and sun are for the eye: no coat goes on a wet face, or where rain comes before it is dry. The data sheet comes first."],
  reads: /* @__PURE__ */ nested(input),
  run: ({ start: startText, least, most, mostHumidity, notBelow, dry, forecast, ...air }, work): CoatingWeather => {
    const start = readClock(startText, { path: ["start"], says: "when the coat begins", zone: forecast.zone });
    refuseAll([...troublesIn([start]), ...(compare(least, most) < 0 ? [] : [{ code: "tooLow" as const, path: ["most"], given: most.toString(), wanted: say("mostUnderLeast", { least }) }])], work);
    const margin = work.part(surfaceMargin, air).answers;
    const { fallsAt, end } = fallOf(start as Clock, forecast, notBelow, work);
    const left = subtract(timeBetween(start as Clock, end), dry);
    const inTime = compare(left, subtract(left, left)) >= 0;
    if (!inTime && fallsAt === undefined) {
      work.refuse(refusal(["forecast"], say("ends", { time: clockText(end) }), say("mustReachBeyond", { time: dry, start: clockText(start as Clock) }), "noAnswer"));
    }
    const outside = ([["air", air.airTemperature], ["surface", air.surfaceTemperature]] as const).filter(([, one]) => compare(one, least) < 0 || compare(one, most) > 0);
    const why = [
      ...(margin.decision === "wait" ? [`the surface is less than ${air.rule} over the dew point`] : []),
      ...outside.map(([name, one]) => `the ${name} is at ${one.toString()}, not from ${least.toString()} to ${most.toString()}`),
      ...(compare(air.humidity, mostHumidity) > 0 ? [`the humidity is above ${mostHumidity.toString()}`] : []),
      ...(inTime ? [] : [`the air falls below ${notBelow.toString()} before the film is dry`]),
    ];
    return {
      decision: why.length === 0 ? "go" : "wait", why, margin,
      ...(fallsAt === undefined ? {} : { fallsAt: clockText(fallsAt) }),
      ...(inTime ? { lastStart: clockText(clockAfter(start as Clock, left, "down")), left } : {}),
    };
  },
});

/** When the air falls below a limit, and the end up to which it does not: the fall or the end of the forecast. */
function fallOf(start: Clock, forecast: AirRecordRead, notBelow: Quantity<"temperature">, work: Work): { readonly fallsAt?: Clock; readonly end: Clock } {
  const readings = readReadings(forecast, work, ["forecast"]);
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) throw new Error("a record has readings");
  const end = clockAfter(last.at, forecast.every, "down");
  if (isBefore(start, first.at) || !isBefore(start, end)) {
    work.refuse({ code: "refused", path: ["start"], given: clockText(start), wanted: say("withinForecast", { from: clockText(first.at), until: clockText(end) }) });
  }
  const ahead = readings.filter(({ at }) => compare(sum([timeBetween(start, at), forecast.every]), subtract(forecast.every, forecast.every)) > 0);
  const fall = ahead.find(({ temperature }) => compare(temperature, notBelow) < 0);
  if (fall === undefined) return { end };
  const at = isBefore(fall.at, start) ? start : fall.at;
  return { fallsAt: at, end: at };
}
