import { describe, expect, it } from "vitest";
import { coatingWeather } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";
import { readingsFrom, steady } from "../timing/records.js";

const forecast = (temperatures: readonly string[]): never => ({ zone: "America/Chicago", every: "1 h", readings: readingsFrom("2026-10-05T15:00Z", temperatures) }) as never;
// 70 degF and 65 % have their dew point at 57.7 degF (PsychroLib: 57.7): a surface of 63 degF is 5.3 over it.
const wall = {
  start: "2026-10-05T10:00", surfaceTemperature: "63 degF", airTemperature: "70 degF", humidity: "65 %", rule: "5 degF",
  least: "45 degF", most: "90 degF", mostHumidity: "85 %", notBelow: "40 degF", dry: "4 h", forecast: forecast(steady("60 degF", 8)),
} as const;

describe("coatingWeather", () => {
  it("goes where all is met, and tells how long: 8 h of forecast less 4 h to dry", () => {
    const found = coatingWeather(wall);
    expect(found).toMatchObject({ decision: "go", why: [], lastStart: "2026-10-05T14:00-05:00[America/Chicago]" });
    expect([found.left?.toString(), found.fallsAt]).toEqual(["4 h", undefined]);
  });

  it("takes the limits of a published rule for paint as they are printed: 45 to 90 degF, and 40 degF before it is dry", () => {
    const { expected } = vector("hdbk1110-temp");
    expect([expected["ambient and surface"], expected["not if falling below before dry"]]).toEqual([`${wall.least.replace(" degF", "")} to ${wall.most}`, wall.notBelow]);
    const waits = (change: object): readonly string[] => coatingWeather({ ...wall, ...change }).why;
    expect([waits({ airTemperature: "90 degF", surfaceTemperature: "90 degF", humidity: "50 %" }), waits({ airTemperature: "45 degF", surfaceTemperature: "46 degF" })]).toEqual([[], []]);
    expect(waits({ airTemperature: "90.1 degF", surfaceTemperature: "90.1 degF", humidity: "50 %" })).toHaveLength(2);
    expect(waits({ airTemperature: "44.9 degF", surfaceTemperature: "46 degF" })).toEqual(["the air is at 44.9 degF, not from 45 degF to 90 degF"]);
  });

  it("waits for the dew point and the humidity, all reasons at once", () => {
    expect(coatingWeather({ ...wall, surfaceTemperature: "62.5 degF" }).why).toEqual(["the surface is less than 5 degF over the dew point"]);
    expect(coatingWeather({ ...wall, rule: "3 degC" }).decision).toBe("wait");
    expect(coatingWeather({ ...wall, humidity: "86 %" }).why).toEqual(["the surface is less than 5 degF over the dew point", "the humidity is above 85 %"]);
  });

  it("waits where the air falls before the film is dry; at the limit itself is no fall", () => {
    const falls = (hours: number): ReturnType<typeof coatingWeather> => coatingWeather({ ...wall, forecast: forecast([...steady("50 degF", hours), "39.9 degF", "50 degF"]) });
    expect(falls(4)).toMatchObject({ decision: "go", fallsAt: "2026-10-05T14:00-05:00[America/Chicago]", lastStart: "2026-10-05T10:00-05:00[America/Chicago]" });
    expect(falls(3)).toMatchObject({ decision: "wait", why: ["the air falls below 40 degF before the film is dry"] });
    expect(falls(3)).not.toHaveProperty("lastStart");
    expect(coatingWeather({ ...wall, forecast: forecast([...steady("50 degF", 3), "40 degF", ...steady("50 degF", 4)]) }).decision).toBe("go");
    // an hour that began before the start and is too cold counts from the start
    expect(coatingWeather({ ...wall, start: "2026-10-05T10:30", forecast: forecast(["39 degF", ...steady("50 degF", 7)]) }).fallsAt).toBe("2026-10-05T10:30-05:00[America/Chicago]");
  });

  it("goes at the highest humidity itself, and does not look at hours that were over before the start", () => {
    expect(coatingWeather({ ...wall, mostHumidity: "65 %" }).why).toEqual([]);
    // The first hour, from 10:00 to 11:00, is too cold: over at 11:00, and long over at 12:00.
    for (const start of ["2026-10-05T11:00", "2026-10-05T12:00"]) expect(coatingWeather({ ...wall, start, forecast: forecast(["39 degF", ...steady("50 degF", 7)]) })).not.toHaveProperty("fallsAt");
  });

  it("refuses a start that is no time", () => {
    expect(faults(coatingWeather.try({ ...wall, start: "2026-13-05T10:00" }))).toEqual(["refused start"]);
  });

  it("tells nothing beyond the forecast", () => {
    expect(faults(coatingWeather.try({ ...wall, dry: "8.1 h" }))).toEqual(["noAnswer forecast"]);
    expect(faults(coatingWeather.try({ ...wall, start: "2026-10-05T09:59" }))).toEqual(["refused start"]);
    expect(faults(coatingWeather.try({ ...wall, start: "2026-10-05T18:00" }))).toEqual(["refused start"]);
  });

  it("refuses a humidity above 100 %, limits the wrong way round, and a rule that is none", () => {
    expect(faults(coatingWeather.try({ ...wall, humidity: "101 %", rule: "4 degF" }))).toEqual(["tooHigh humidity", "notAChoice rule"]);
    expect(faults(coatingWeather.try({ ...wall, least: "90 degF" }))).toEqual(["tooLow most"]);
  });
});
