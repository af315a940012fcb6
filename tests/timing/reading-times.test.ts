// Readings of the weather over a shift, by the clock.
import { describe, expect, it } from "vitest";
import { readingTimes } from "../../src/timing/reading-times.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const chicago = (from: string, until: string, every: string): readonly string[] =>
  readingTimes({ zone: "America/Chicago", from, until, every }).times.map((time) => time.slice(0, 22));

describe("readingTimes", () => {
  it("reads about every 4 h (MIL-HDBK-1110), at the beginning and at the end", () => {
    const every = vector("hdbk1110-readings").expected.every?.replace("about ", "") ?? "";
    expect(chicago("2026-06-01T07:00", "2026-06-01T17:30", every)).toEqual(["2026-06-01T07:00-05:00", "2026-06-01T11:00-05:00", "2026-06-01T15:00-05:00", "2026-06-01T17:30-05:00"]);
  });

  it("reads once at the end where the last one falls there, and twice in a short shift", () => {
    expect(chicago("2026-06-01T07:00", "2026-06-01T15:00", "4 h")).toHaveLength(3);
    expect(chicago("2026-06-01T07:00", "2026-06-01T07:20", "4 h")).toHaveLength(2);
  });

  it("goes by time that passes where the clocks change", () => {
    // 8 March 2026 in Chicago: 01:00 and an hour is 03:00.
    expect(chicago("2026-03-08T00:00", "2026-03-08T04:00", "1 h")).toEqual(["2026-03-08T00:00-06:00", "2026-03-08T01:00-06:00", "2026-03-08T03:00-05:00", "2026-03-08T04:00-05:00"]);
  });

  it("refuses an end before the beginning, more than two days, and no time between", () => {
    const tried = (until: string, every = "4 h"): readonly string[] => faults(readingTimes.try({ zone: "America/Chicago", from: "2026-06-01T07:00", until, every }));
    expect(tried("2026-06-01T07:00")).toEqual(["refused until"]);
    expect(tried("2026-06-03T08:00")).toEqual(["tooHigh until"]);
    expect(tried("2026-06-01T15:00", "0 h")).toEqual(["tooLow every"]);
    expect(tried("noon")).toEqual(["refused until"]);
  });
});
