import { describe, expect, it } from "vitest";
import { sum } from "../../src/core/quantity-arithmetic.js";
import { quantity } from "../../src/core/read-quantity.js";
import { flatness } from "../../src/limits/flatness.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

type Job = Parameters<typeof flatness>[0];

/** The verdict on one reading. */
const verdict = (rule: Job["rule"], longestEdge: string, straightedge: string, gap: unknown): string | undefined => {
  const tried = flatness.try({ rule, longestEdge, readings: [{ straightedge, gap }] });
  return tried.ok ? tried.solution.answers.readings[0]?.verdict : undefined;
};

/** A hair under a gap, the gap, a hair over it. */
const round = (gap: string): readonly unknown[] => (["-0.0001 in", "0 in", "0.0001 in"] as const).map((by) => sum([quantity("length", gap as "1 in"), quantity("length", by)]));

describe("flatness", () => {
  it("holds units with an edge of 15 in or more to 1/8 in in 10 ft and 1/16 in in 2 ft (ANSI A108.02, 4.2.2)", () => {
    const { expected } = vector("flatness-large-tile");
    expect(round(expected.per10ft ?? "").map((gap) => verdict("ANSI A108.02", "15 in", "10 ft", gap))).toEqual(["within", "within", "over"]);
    expect(round(expected.per2ft ?? "").map((gap) => verdict("ANSI A108.02", "15 in", "24 in", gap))).toEqual(["within", "within", "over"]);
  });

  it("goes by the longest edge: 15 in is large, a hair under it is small", () => {
    const row = (longestEdge: "14.9999 in" | "15 in" | "15.0001 in"): string => flatness({ rule: "ANSI A108.02", longestEdge, readings: [{ straightedge: "10 ft", gap: "0 in" }] }).row;
    expect([row("14.9999 in"), row("15 in"), row("15.0001 in")]).toEqual(["ANSI A108.02, small units", "ANSI A108.02, large units", "ANSI A108.02, large units"]);
  });

  it("decides nothing on small units, whose figures are from memory, and says what they are", () => {
    const { over, notOnFile } = flatness({ rule: "ANSI A108.02", longestEdge: "12 in", readings: [{ where: "bay 1", straightedge: "10 ft", gap: "2 in" }, { straightedge: "1 ft", gap: "1/32 in" }] });
    expect(over).toEqual([]);
    expect(notOnFile).toEqual([
      "bay 1, in 10 ft: no limit is on file; from memory it is 0.25 in, and 2 in would be over",
      "reading 2, in 1 ft: no limit is on file; from memory it is 0.0625 in, and 0.03125 in would be within",
    ]);
  });

  it("holds the wall behind thin brick to 1/4 in in 10 ft (BIA Technical Note 28C, 2014)", () => {
    expect(vector("bia-tn28c-plane").expected.plane).toBe("1/4 in in 10 ft (6 mm in 3.05 m)");
    expect(round("1/4 in").map((gap) => verdict("BIA Technical Note 28C", "8 in", "10 ft", gap))).toEqual(["within", "within", "over"]);
  });

  it("holds a second coat of plaster to 1/4 in under 5 ft (IBC 2018, Table 2512.6)", () => {
    expect(vector("plaster-plane-ibc").expected.plane).toBe("1/4 in under a 5-ft straightedge");
    expect(round("1/4 in").map((gap) => verdict("IBC 2018, second plaster coat", "8 in", "5 ft", gap))).toEqual(["within", "within", "over"]);
  });

  it("has nothing on file for a straightedge of another length", () => {
    expect(verdict("ANSI A108.02", "24 in", "6 ft", "1 in")).toBe("not on file");
    expect(verdict("BIA Technical Note 28C", "8 in", "3.05 m", "6 mm")).toBe("not on file");
  });

  it("names what is over by the place it was given", () => {
    const { over } = flatness({ rule: "ANSI A108.02", longestEdge: "24 in", readings: [{ where: "grid C, 4 ft up", straightedge: "10 ft", gap: "5/16 in" }, { straightedge: "10 ft", gap: "1/4 in" }] });
    expect(over).toEqual(["grid C, 4 ft up, in 10 ft: 0.3125 in is over 0.125 in", "reading 2, in 10 ft: 0.25 in is over 0.125 in"]);
  });

  it("wants a rule and a reading, and tells all that is wrong at once", () => {
    expect(faults(flatness.try({ rule: "ANSI A108.02", longestEdge: "24 in", readings: [] }))).toEqual(["refused readings"]);
    expect(faults(flatness.try({ longestEdge: "0 in", readings: [{ straightedge: "10 ft", gap: "-1/8 in" }] }))).toEqual(["missing rule", "tooLow longestEdge", "tooLow readings.0.gap"]);
  });
});
