import { describe, expect, it } from "vitest";
import { mixClock } from "../../src/timing/index.js";
import { vector } from "../support/vectors.js";

const minutes = (time: { to(unit: "min"): { toString(): string } }): string => time.to("min").toString();

describe("the clock of a batch", () => {
  it("slakes 5 to 7 minutes (common practice for bagged polymer-modified mortars)", () => {
    // first water 0; mixed 3; slaked 3 + 5 = 8 to 3 + 7 = 10; ready a minute later; thrown away after 2 h = 120
    const clock = mixClock({ mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" });
    expect([clock.slakeFrom, clock.remixFrom, clock.remixBy, clock.readyFrom, clock.readyBy, clock.discard, clock.usable].map(minutes)).toEqual(["3", "8", "10", "9", "11", "120", "109"]);
  });

  it("slakes 5 to 15 minutes (common practice in general), and remixing does not restart its life", () => {
    const short = mixClock({ mixing: "3 min", slakeLow: "5 min", slakeHigh: "15 min", remixing: "1 min", life: "90 min" });
    const long = mixClock({ mixing: "3 min", slakeLow: "5 min", slakeHigh: "15 min", remixing: "10 min", life: "90 min" });
    expect([minutes(short.discard), minutes(long.discard)]).toEqual(["90", "90"]);
  });

  it("refuses a batch that is dead before it is ready", () => {
    const ready = { mixing: "3 min", slakeLow: "5 min", slakeHigh: "15 min", remixing: "1 min" } as const;
    // ready at the latest at 3 + 15 + 1 = 19 min
    expect(mixClock.try({ ...ready, life: "20 min" }).ok).toBe(true);
    for (const life of ["19 min", "10 min"]) {
      const tried = mixClock.try({ ...ready, life });
      expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])).toEqual([["tooLow", ["usable"]]]);
    }
  });

  it("refuses a most time to slake that is under the least", () => {
    expect(mixClock.try({ mixing: "3 min", slakeLow: "7 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" }).ok).toBe(true);
    const tried = mixClock.try({ mixing: "3 min", slakeLow: "9 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])).toEqual([["tooLow", ["slakeSpread"]]]);
  });
});

describe("by the clock on the wall", () => {
  const batch = { mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" } as const;

  it("mixed for the 3 min that UFGS-04215 asks at least", () => {
    const least = /\d+ min/.exec(vector("mix-3-5min").expected["UFGS-04215"] ?? "")?.[0] ?? "";
    expect(mixClock({ ...batch, mixing: least, firstWater: "2026-06-01T09:40", zone: "America/Chicago" }).clock).toEqual({
      slakeFrom: "2026-06-01T09:43-05:00[America/Chicago]",
      remixFrom: "2026-06-01T09:48-05:00[America/Chicago]",
      remixBy: "2026-06-01T09:50-05:00[America/Chicago]",
      readyFrom: "2026-06-01T09:49-05:00[America/Chicago]",
      readyBy: "2026-06-01T09:51-05:00[America/Chicago]",
      discard: "2026-06-01T11:40-05:00[America/Chicago]",
    });
  });

  it("over midnight, and over an hour that the clocks leave out", () => {
    expect(mixClock({ ...batch, firstWater: "2026-06-30T23:00[America/Chicago]" }).clock?.discard).toBe("2026-07-01T01:00-05:00[America/Chicago]");
    expect(mixClock({ ...batch, firstWater: "2026-03-08T01:00[America/Chicago]" }).clock?.discard).toBe("2026-03-08T04:00-05:00[America/Chicago]");
  });

  it("without a time of day tells times alone", () => {
    expect(mixClock(batch)).not.toHaveProperty("clock");
  });

  it("refuses a time without a zone, and a zone that is none", () => {
    for (const wrong of [{ firstWater: "2026-06-01T09:40" }, { firstWater: "2026-06-01T09:40", zone: "Midwest" }, { firstWater: "09:40", zone: "America/Chicago" }]) {
      const tried = mixClock.try({ ...batch, ...wrong });
      expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])).toEqual([["refused", ["firstWater"]]]);
    }
  });
});

describe("the life of a batch at its temperature", () => {
  const batch = { mixing: "3 min", slakeLow: "5 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" } as const;

  it("is half at 88 degF by the doubling rule, and the limit is rounded down by the clock", () => {
    const hot = mixClock({ ...batch, warmth: { temperature: "88 degF", reference: "70 degF", rule: "doubling" }, firstWater: "2026-06-01T09:40[America/Chicago]" });
    expect([hot.discard.to("min").toFixed(6), hot.clock?.discard]).toEqual(["60.000000", "2026-06-01T10:40-05:00[America/Chicago]"]);
    // 120 x 2^(-10/18) = 81.65 min
    const warm = mixClock({ ...batch, warmth: { temperature: "80 degF", reference: "70 degF", rule: "doubling" }, firstWater: "2026-06-01T09:40[America/Chicago]" });
    expect([warm.discard.to("min").toFixed(2), warm.clock?.discard]).toEqual(["81.65", "2026-06-01T11:01-05:00[America/Chicago]"]);
  });

  it("so short that the batch is dead before it is ready is refused", () => {
    const tried = mixClock.try({ ...batch, life: "20 min", warmth: { temperature: "106 degF", reference: "70 degF", rule: "doubling" } });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])).toEqual([["tooLow", ["usable"]]]);
  });

  it("is told under where it stands when it is out of range", () => {
    const tried = mixClock.try({ ...batch, warmth: { temperature: "130 degF", reference: "70 degF", rule: "Arrhenius" } });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])).toEqual([["tooHigh", ["warmth", "temperature"]]]);
    const lacking = mixClock.try({ ...batch, warmth: { temperature: "80 degF", reference: "70 degF", rule: "Arrhenius" } });
    expect(lacking.ok ? [] : lacking.problems.map(({ code, path }) => [code, path])).toEqual([["missing", ["warmth", "activation"]]]);
  });
});
