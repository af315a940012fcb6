import { describe, expect, it } from "vitest";
import { coverTonight } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";
import { readingsFrom, steady } from "./records.js";

const from = (temperatures: readonly string[]): { readonly zone: string; readonly every: string; readonly readings: ReturnType<typeof readingsFrom> } => ({ zone: "America/Chicago", every: "1 h", readings: readingsFrom("2026-11-02T23:00Z", temperatures) });
const evening = { workEnds: "2026-11-02T17:00[America/Chicago]", rule: "MSJC 1999", meanBy: "mean of the hours" } as const;
const steadily = (temperature: string, rest: object = {}): ReturnType<typeof coverTonight> => coverTonight({ ...evening, record: from(steady(temperature, 24)), ...rest });

describe("the mean of the day", () => {
  it("by the hours is 36 degF, by low and high 39 degF, on the same day", () => {
    const { inputs, expected } = vector("mdt-hourly-vs-minmax");
    expect(inputs.hourly).toBe("24 readings: 12 at 30 degF, 6 at 36, 6 at 48");
    const record = from([...steady("30 degF", 12), ...steady("36 degF", 6), ...steady("48 degF", 6)]);
    expectPrinted(coverTonight({ ...evening, record }).mean.to("degF"), expected["mean of hourly"]);
    expectPrinted(coverTonight({ ...evening, record, meanBy: "mean of low and high" }).mean.to("degF"), expected["(max+min)/2"]);
  });

  it("can change the band: low 27 and high 43 degF, by the hours 31", () => {
    // 17 h at 27 and 7 h at 40.714 have the mean (459 + 285) / 24 = 31; with one hour at 43 the mean of low and high is 35
    const record = from([...steady("27 degF", 17), ...steady("40.3333333333333333 degF", 6), "43 degF"]);
    const byHours = coverTonight({ ...evening, rule: "Beall 2004", record });
    expect([byHours.mean.to("degF").toFixed(6), byHours.band]).toEqual(["31.000000", "25 degF to 32 degF"]);
    expect(coverTonight({ ...evening, rule: "Beall 2004", record, meanBy: "mean of low and high" })).toMatchObject({ band: "not on file" });
    expect(byHours.others.some(({ meanBy, rule, band }) => meanBy === "mean of low and high" && rule === "Beall 2004" && band === "not on file")).toBe(true);
  });

  it("from a low and a high alone: 30 and 48 degF are 39, 27 and 43 are 35, and other means are not told", () => {
    const { inputs, expected } = vector("mdt-hourly-vs-minmax");
    expect(inputs["min/max"]).toBe("30 and 48 degF");
    const by = (low: string, high: string): ReturnType<typeof coverTonight> => coverTonight({ ...evening, lowAndHigh: { low, high }, meanBy: "mean of low and high" });
    expectPrinted(by("30 degF", "48 degF").mean.to("degF"), expected["(max+min)/2"]);
    expect(by("27 degF", "43 degF")).toMatchObject({ band: "25 degF to 40 degF", until: "2026-11-03T17:00-06:00[America/Chicago]" });
    expect(by("27 degF", "43 degF").others.every(({ meanBy }) => meanBy === "mean of low and high")).toBe(true);
    const tried = (more: object): readonly string[] => faults(coverTonight.try({ ...evening, lowAndHigh: { low: "27 degF", high: "43 degF" }, ...more }));
    expect([tried({}), tried({ record: from(steady("30 degF", 24)) }), tried({ lowAndHigh: undefined })]).toEqual([["refused meanBy"], ["either weather"], ["either weather"]]);
    expect(tried({ lowAndHigh: { low: "43 degF", high: "27 degF" }, meanBy: "mean of low and high" })).toEqual(["tooLow lowAndHigh.high"]);
  });

  it("goes by the first 24 h, as for masonry without grout", () => {
    expect(vector("tek3-1c-window").expected.ungrouted).toBe("mean daily temperature, first 24 h");
    expect(coverTonight({ ...evening, record: from([...steady("30 degF", 24), ...steady("10 degF", 24)]) }).mean.toString()).toBe("30 degF");
  });
});

describe("what the rules ask", () => {
  it.each([
    ["cover-24h-msjc", "30 degF", "weather-resistive membrane"],
    ["blanket-24h-msjc", "22 degF", "insulating blankets"],
  ] as const)("%s", (id, temperature, method) => {
    const { expected } = id === "cover-24h-msjc" ? vector("cover-24h-msjc") : vector("blanket-24h-msjc");
    for (const rule of ["MSJC 1999", "BIA Technical Note 1"] as const) {
      const cover = steadily(temperature, { rule });
      expect([cover.lasts?.toString(), cover.method]).toEqual([expected[rule], expect.stringContaining(method)]);
    }
  });

  it("Beall 2004: 16 h from 25 to 32 degF, 24 h from 20 to 25", () => {
    expect(vector("beall-16h").expected["Beall 2004"]).toBe("16 h; 24 h in the 20-25 degF band");
    expect(["25 degF", "31.9 degF", "24.9 degF", "20 degF"].map((temperature) => steadily(temperature, { rule: "Beall 2004" }).lasts?.toString())).toEqual(["16 h", "16 h", "24 h", "24 h"]);
  });

  it("at the edges of the bands", () => {
    expect(["40 degF", "39.9 degF", "25 degF", "24.9 degF", "20 degF", "19.9 degF"].map((temperature) => steadily(temperature).band)).toEqual([
      "40 degF or more", "25 degF to 40 degF", "25 degF to 40 degF", "20 degF to 25 degF", "20 degF to 25 degF", "not on file",
    ]);
  });

  it("the end by the clock, over a change of the clocks too", () => {
    expect(steadily("30 degF").until).toBe("2026-11-03T17:00-06:00[America/Chicago]");
    expect(steadily("30 degF", { rule: "BIA Technical Note 1" }).until).toBe("2026-11-04T17:00-06:00[America/Chicago]");
    const autumn = coverTonight({ ...evening, workEnds: "2026-10-31T17:00-05:00", record: { zone: "America/Chicago", every: "1 h", readings: readingsFrom("2026-10-31T22:00Z", steady("30 degF", 24)) } });
    expect(autumn.until).toBe("2026-11-01T16:00-06:00[America/Chicago]");
  });

  it("what the others ask where they differ: 24 and 48 h", () => {
    const { others } = steadily("30 degF");
    expect(others.map(({ rule, meanBy, lasts }) => [rule, meanBy, lasts?.toString()])).toEqual([
      ["BIA Technical Note 1", "mean of the hours", "48 h"], ["BIA Technical Note 1", "mean of low and high", "48 h"],
      ["Beall 2004", "mean of the hours", "16 h"], ["Beall 2004", "mean of low and high", "16 h"],
    ]);
  });

  it("none below what is on file: it says so, and tells no end", () => {
    const { answers, cautions } = coverTonight.solve({ ...evening, record: from(steady("15 degF", 24)) });
    expect([answers.method, answers.until, answers.lasts]).toEqual([expect.stringContaining("not on file"), undefined, undefined]);
    expect(cautions.some((text) => text.includes("not on file"))).toBe(true);
  });

  it("the cover over the top laps 2 ft down each side", () => {
    expect(vector("top-cover").expected.lap).toBe("2 ft (0.6 m) minimum");
    expect(steadily("30 degF").topLap.toString()).toBe("2 ft");
  });
});

describe("a record that does not serve", () => {
  it("begins after the work ends, or ends before a day has passed", () => {
    expect(faults(coverTonight.try({ ...evening, record: from(steady("30 degF", 23)) }))).toEqual(["refused record"]);
    expect(faults(coverTonight.try({ ...evening, workEnds: "2026-11-02T16:59[America/Chicago]", record: from(steady("30 degF", 30)) }))).toEqual(["refused record"]);
    expect(faults(coverTonight.try({ ...evening, record: from(steady("30 degF", 24)) }))).toEqual([]);
  });

  it("has readings farther apart than the hour of which the mean is told", () => {
    const apart = (hours: number): readonly string[] => faults(coverTonight.try({ ...evening, record: { zone: "America/Chicago", every: `${60 * hours} min`, readings: readingsFrom("2026-11-02T23:00Z", steady("30 degF", 48), hours) } }));
    expect([apart(0.5), apart(1), apart(3)]).toEqual([[], [], ["tooHigh record.every"]]);
  });

  it("or the rule, or the mean, is not named", () => {
    expect(faults(coverTonight.try({ workEnds: evening.workEnds, record: from(steady("30 degF", 24)) }))).toEqual(["missing rule", "missing meanBy"]);
  });
});
