import { describe, expect, it } from "vitest";
import { mixClock } from "../../src/timing/index.js";

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
    const tried = mixClock.try({ mixing: "3 min", slakeLow: "9 min", slakeHigh: "7 min", remixing: "1 min", life: "2 h" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path])).toEqual([["tooLow", ["slakeSpread"]]]);
  });
});
