// Figures at their very edge, and what is said where two things were given or none.
import { describe, expect, it } from "vitest";
import type { Attempt } from "../../src/core/solution.js";
import { clockText, readClock } from "../../src/timing/clock.js";
import { coverTonight } from "../../src/timing/cover-tonight.js";
import { equivalentAge } from "../../src/timing/equivalent-age.js";
import { lastUnitToday } from "../../src/timing/last-unit-today.js";
import { readingTimes } from "../../src/timing/reading-times.js";
import { recoatWindow } from "../../src/timing/recoat-window.js";
import { shelfLife } from "../../src/timing/shelf-life.js";
import { timeToAge } from "../../src/timing/time-to-age.js";
import { workWindows } from "../../src/timing/work-windows.js";
import { readingsFrom, steady } from "./records.js";

/** What is wrong, with what is said to have been given. */
const given = (tried: Attempt<unknown>): readonly string[] => (tried.ok ? [] : tried.problems.map((problem) => `${problem.code} ${problem.path.join(".")}: ${problem.given}`));
const wanted = (tried: Attempt<unknown>): readonly string[] => (tried.ok ? [] : tried.problems.map((problem) => problem.wanted));

const record = (temperatures: readonly string[], every = 1): object => ({ zone: "America/Chicago", every: `${String(every)} h`, readingIs: "mean until the next", readings: readingsFrom("2026-11-02T14:00:00Z", temperatures, every) });

describe("equivalentAge", () => {
  const rule = { rule: "doubling", reference: "70 degF" } as const;

  it("counts as frozen what is below 32 degF, where water freezes, and not at it", () => {
    const cold = equivalentAge.solve({ ...rule, intervals: [{ lasts: "2 h", temperature: "31.9 degF" }, { lasts: "3 h", temperature: "32 degF" }, { lasts: "5 h", temperature: "33 degF" }] });
    expect(cold.answers.frozen.toString()).toBe("2 h");
    expect(cold.cautions.join(" ")).toContain("below freezing");
    const cool = equivalentAge.solve({ ...rule, intervals: [{ lasts: "3 h", temperature: "32 degF" }] });
    expect(cool.answers.frozen.toString()).toBe("0 h");
    expect(cool.cautions.join(" ")).not.toContain("below freezing");
  });

  it("takes one history, of at least one interval and not ten thousand and one", () => {
    const one = { lasts: "1 h", temperature: "50 degF" };
    expect(given(equivalentAge.try(rule))).toEqual(["either history: "]);
    expect(given(equivalentAge.try({ ...rule, intervals: [one], record: record(steady("50 degF", 3)) }))).toEqual(["either history: record and intervals"]);
    expect(given(equivalentAge.try({ ...rule, intervals: [] }))).toEqual(["refused intervals: 0 intervals"]);
    expect(given(equivalentAge.try({ ...rule, intervals: Array.from({ length: 10_001 }, () => one) }))).toEqual(["refused intervals: 10001 intervals"]);
  });
});

describe("lastUnitToday", () => {
  it("takes the earlier of both rules, also where that is Arrhenius", () => {
    // Ten hours at 40 degF, then frost at 18:00. An age of 2 h at 50 degF takes 2 x 2^(10/18) = 2.939 h by doubling, and by
    // Arrhenius with 10,000 K (40 degF is 277.594 K, 50 degF 283.150 K) 2 x exp(10000 x (1/277.594 - 1/283.150)) = 4.055 h.
    const day = lastUnitToday({ record: record([...steady("40 degF", 10), "31 degF", "31 degF"]), cure: "2 h", reference: "50 degF", activation: "10000 K" } as never);
    const hours = 2 * Math.exp(10_000 * (1 / ((40 + 459.67) / 1.8) - 1 / ((50 + 459.67) / 1.8)));
    expect(hours.toFixed(3)).toBe("4.055");
    expect(day.freezesAt).toBe("2026-11-02T18:00-06:00[America/Chicago]");
    // 18:00 less 4 h 3.3 min, down to the minute.
    expect(day.lastUnit).toBe("2026-11-02T13:56-06:00[America/Chicago]");
  });
});

describe("timeToAge", () => {
  it("takes one temperature or a record", () => {
    const wait = { age: "2 h", rule: "doubling", reference: "70 degF" };
    expect(given(timeToAge.try(wait))).toEqual(["either warmth: "]);
    expect(given(timeToAge.try({ ...wait, temperature: "60 degF", record: record(steady("60 degF", 12)) }))).toEqual(["either warmth: temperature and record"]);
  });
});

describe("recoatWindow", () => {
  const coat = { firstPatch: "2026-06-01T08:00", lastPatch: "2026-06-01T11:00", zone: "America/Chicago", from: "71 degF", rows: [{ upTo: "80 degF", soonest: "6 h", latest: "48 h" }, { upTo: "90 degF", soonest: "4 h", latest: "36 h" }] };

  it("takes one figure of the hottest hour or a record", () => {
    const surface = { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: readingsFrom("2026-06-01T13:00:00Z", steady("75 degF", 6)) };
    expect(given(recoatWindow.try(coat))).toEqual(["either hottest: "]);
    expect(given(recoatWindow.try({ ...coat, hottestSurface: "75 degF", surface }))).toEqual(["either hottest: hottestSurface and surface"]);
  });

  it("says where its table ends, and takes a first row of one temperature", () => {
    expect(wanted(recoatWindow.try({ ...coat, hottestSurface: "91 degF" }))).toEqual(["the table goes from 71 degF to 90 degF"]);
    expect(recoatWindow.try({ ...coat, hottestSurface: "71 degF", rows: [{ upTo: "71 degF", soonest: "6 h", latest: "48 h" }] }).ok).toBe(true);
    expect(given(recoatWindow.try({ ...coat, hottestSurface: "71 degF", rows: [...coat.rows, { upTo: "90 degF", soonest: "3 h", latest: "24 h" }] }))).toEqual(["refused rows.2.upTo: 90 degF"]);
  });
});

describe("a record", () => {
  const at = (...hours: readonly number[]): object => ({ zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: hours.map((hour) => ({ at: `2026-06-01T${String(hour).padStart(2, "0")}:00`, temperature: "60 degF" })) });
  const tried = (...hours: readonly number[]): readonly string[] => wanted(equivalentAge.try({ rule: "doubling", reference: "70 degF", record: at(...hours) }));

  it("has two readings or more, each when it is due", () => {
    expect(tried(8, 9)).toEqual([]);
    expect(tried(8)[0]).toContain("a record has from 2 to");
    expect(tried(8, 9, 11)).toEqual(["readings come every 1 h; there is a gap"]);
    expect(tried(8, 9, 9)).toEqual(["the same time stands twice"]);
    expect(tried(8, 9, 7)).toEqual(["the record is not in the order of time"]);
    const soon = equivalentAge.try({ rule: "doubling", reference: "70 degF", record: { ...at(8, 9, 10), every: "2 h" } });
    expect(wanted(soon)[0]).toBe("readings come every 2 h; this one comes too soon");
  });
});

describe("times and days", () => {
  it("readings are planned over 48 h at the most", () => {
    const plan = { zone: "America/Chicago", from: "2026-06-01T07:00", every: "24 h" };
    expect(readingTimes({ ...plan, until: "2026-06-03T07:00" }).times).toHaveLength(3);
    expect(given(readingTimes.try({ ...plan, until: "2026-06-03T07:01" }))).toEqual(["tooHigh until: 2026-06-03T07:01"]);
  });

  it("a bag may be used on the day it was made", () => {
    expect(shelfLife({ madeOn: "2026-01-15", useOn: "2026-01-15", shelfLife: "180 d" }).ageAtUse.toString()).toBe("0 d");
    expect(given(shelfLife.try({ madeOn: "2026-01-15", useOn: "2026-01-14", shelfLife: "180 d" }))).toEqual(["refused useOn: 2026-01-14"]);
  });

  it("a time with its distance from UTC is shown in the zone given besides, whatever that distance", () => {
    const read = readClock("2026-06-01T12:30+00:00", { path: ["at"], says: "time", zone: "America/Chicago" });
    expect("wanted" in read ? read.wanted : clockText(read)).toBe("2026-06-01T07:30-05:00[America/Chicago]");
  });
});

describe("coverTonight", () => {
  const rule = { rule: "MSJC 1999", meanBy: "mean of low and high" } as const;

  it("means the lowest and the highest of the day, wherever they stand in it", () => {
    const day = ["36 degF", "30 degF", "38 degF", "44 degF", ...steady("36 degF", 20)];
    const { mean } = coverTonight({ ...rule, workEnds: "2026-11-02T14:00Z", record: { every: "1 h", readings: readingsFrom("2026-11-02T14:00:00Z", day) } });
    // (30 + 44) / 2
    expect(mean.toString()).toBe("37 degF");
  });

  it("takes one temperature for low and high, and a bare time with the zone besides", () => {
    const { mean } = coverTonight({ ...rule, workEnds: "2026-11-02T17:00", zone: "America/Chicago", lowAndHigh: { low: "36 degF", high: "36 degF" } });
    expect(mean.toString()).toBe("36 degF");
    expect(given(coverTonight.try({ ...rule, workEnds: "2026-11-02T17:00", zone: "America/Chicago", lowAndHigh: { low: "36 degF", high: "35 degF" } }))).toEqual(["tooLow lowAndHigh.high: 35 degF"]);
  });
});

describe("workWindows", () => {
  it("waits rise: what is usual may be the least, and the longest is no shorter than either", () => {
    const job = (hold: object): object => ({ rule: "doubling", reference: "70 degF", record: record(steady("70 degF", 12)), holds: [{ work: "tooling", done: "2026-11-02T08:30", ...hold }] });
    expect(workWindows.try(job({ least: "20 min", typical: "20 min", most: "20 min" })).ok).toBe(true);
    expect(wanted(workWindows.try(job({ least: "20 min", typical: "30 min", most: "25 min" })))).toEqual(["at least 30 min"]);
    expect(wanted(workWindows.try(job({ least: "20 min", most: "15 min" })))).toEqual(["at least 20 min"]);
    expect(wanted(workWindows.try(job({ least: "20 min", typical: "15 min" })))).toEqual(["at least the least, 20 min"]);
  });
});
