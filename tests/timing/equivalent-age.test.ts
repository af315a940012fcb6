import { describe, expect, it } from "vitest";
import { equivalentAge } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vectors } from "../support/vectors.js";
import { readingsFrom } from "./records.js";

const by = { rule: "Arrhenius", activation: "5000 K", reference: "20 degC" } as const;

/** `6@22; 6@18` as intervals. */
const intervalsIn = (text: string | undefined): readonly { readonly lasts: string; readonly temperature: string }[] =>
  (text ?? "").split("; ").map((one) => {
    const [hours = "", celsius = ""] = one.split("@");
    return { lasts: `${hours} h`, temperature: `${celsius} degC` };
  });

describe("the eight-interval record", () => {
  it.each(vectors("history-row-"))("$id", ({ inputs, expected }) => {
    const { elapsed, age, intervals } = equivalentAge({ ...by, intervals: intervalsIn(inputs["intervals (h@degC)"]) });
    expectPrinted(elapsed.to("h"), expected.elapsed);
    expectPrinted(age.to("h"), expected["equivalent age at 20 degC, Q=5000 K"]);
    expect(intervals.at(-1)?.total.toString()).toBe(age.toString());
  });

  it("each interval by itself in plain numbers: t exp(5000 (1/293.15 - 1/T))", () => {
    const intervals = intervalsIn("6@22; 6@18; 12@12; 12@15; 12@8; 12@5; 12@10; 24@14");
    const ages = equivalentAge({ ...by, intervals }).intervals.map(({ age }) => age.toNumber("h"));
    const byHand = [[6, 22], [6, 18], [12, 12], [12, 15], [12, 8], [12, 5], [12, 10], [24, 14]].map(([hours = 0, celsius = 0]) => hours * Math.exp(5000 * (1 / 293.15 - 1 / (273.15 + celsius))));
    expect(ages.map((age) => age.toFixed(9))).toEqual(byHand.map((age) => age.toFixed(9)));
  });
});

describe("equivalentAge", () => {
  it("at the reference is the time itself, by either rule", () => {
    for (const rule of [by, { rule: "doubling", reference: "20 degC" } as const]) {
      expect(equivalentAge({ ...rule, intervals: [{ lasts: "7 h", temperature: "20 degC" }] }).age.toString()).toBe("7 h");
    }
  });

  it("by doubling: 10 h at 10 degC and 5 h at 30 degC are 5 + 10 h at 20 degC", () => {
    const { age } = equivalentAge({ rule: "doubling", reference: "20 degC", intervals: [{ lasts: "10 h", temperature: "10 degC" }, { lasts: "5 h", temperature: "30 degC" }] });
    expect(age.to("h").toFixed(12)).toBe("15.000000000000");
  });

  it("time below freezing counts for nothing, is told, and is warned of", () => {
    const { answers, cautions } = equivalentAge.solve({ ...by, intervals: [{ lasts: "5 h", temperature: "20 degC" }, { lasts: "8 h", temperature: "-0.1 degC" }, { lasts: "1 h", temperature: "0 degC" }] });
    expect(answers.frozen.toString()).toBe("8 h");
    expect(answers.intervals.map(({ ageFactor }) => ageFactor.toNumber() > 0)).toEqual([true, false, true]);
    expect(cautions.some((text) => text.startsWith("Time below freezing counts for nothing"))).toBe(true);
  });

  it("shows one formula and one interval of many", () => {
    const record = { every: "1 h", readingIs: "mean until the next", readings: readingsFrom("2026-01-01T00:00Z", Array.from({ length: 300 }, (_, hour) => `${40 + (hour % 24)} degF`)) } as const;
    const { parts, answers } = equivalentAge.solve({ ...by, record });
    expect(parts.map(({ id }) => id)).toEqual(["timing.age-factor-by-arrhenius"]);
    expect(answers.intervals).toHaveLength(300);
  });
});

describe("a record by the clock", () => {
  it("of readings at a moment takes the mean of both ends; as means it takes them as they are", () => {
    const readings = readingsFrom("2026-06-01T12:00Z", ["10 degC", "30 degC", "30 degC"]);
    const momentary = equivalentAge({ rule: "doubling", reference: "20 degC", record: { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings } });
    expect(momentary.intervals.map(({ from, temperature }) => [from, temperature.toString()])).toEqual([
      ["2026-06-01T07:00-05:00[America/Chicago]", "20 degC"], ["2026-06-01T08:00-05:00[America/Chicago]", "30 degC"],
    ]);
    expect(momentary.age.to("h").toFixed(9)).toBe("3.000000000");
    const asMeans = equivalentAge({ rule: "doubling", reference: "20 degC", record: { every: "1 h", readingIs: "mean until the next", readings } });
    expect([asMeans.elapsed.toString(), asMeans.age.to("h").toFixed(9)]).toEqual(["3 h", "4.500000000"]);
  });

  it("goes over midnight and over a change of the clocks, and knows the hour that is left out or comes twice", () => {
    const spring = ["2026-03-07T23:00", "2026-03-08T00:00", "2026-03-08T01:00", "2026-03-08T03:00", "2026-03-08T04:00"].map((at) => ({ at, temperature: "20 degC" }));
    const autumn = ["2026-11-01T00:00", "2026-11-01T01:00-05:00", "2026-11-01T01:00-06:00", "2026-11-01T02:00"].map((at) => ({ at, temperature: "20 degC" }));
    const age = (readings: readonly { readonly at: string; readonly temperature: string }[]): string =>
      equivalentAge({ ...by, record: { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings } }).age.toString();
    expect([age(spring), age(autumn)]).toEqual(["4 h", "3 h"]);
  });
});

describe("a bad history", () => {
  const record = (readings: readonly object[], rest: object = {}): object => ({ ...by, record: { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings, ...rest } });
  const at = (hour: string, temperature = "20 degC"): object => ({ at: `2026-06-01T${hour}`, temperature });
  const messages = (input: object): readonly string[] => {
    const tried = equivalentAge.try(input);
    return tried.ok ? [] : tried.problems.map(({ message }) => message);
  };

  it("has a gap, a double reading, or one out of order; all of them are told", () => {
    expect(messages(record([at("08:00"), at("09:00"), at("11:00"), at("11:00"), at("10:00"), at("10:30")]))).toEqual([
      "record.readings[2].at (time of the reading): 2 h after the reading above it: readings come every 1 h; there is a gap",
      "record.readings[3].at (time of the reading): 0 h after the reading above it: the same time stands twice",
      "record.readings[4].at (time of the reading): -1 h after the reading above it: the record is not in the order of time",
      "record.readings[5].at (time of the reading): 0.5 h after the reading above it: readings come every 1 h; this one comes too soon",
    ]);
  });

  it("mixes units", () => {
    expect(messages(record([at("08:00"), at("09:00", "68 degF")]))).toEqual(["record.readings[1].temperature (temperature read): 68 degF: the record begins in degC; write all of it in one unit"]);
  });

  it("has one reading, or more than a year of hours", () => {
    expect(messages(record([at("08:00")]))).toEqual(["record.readings (readings, one after the other): 1 reading: a record has from 2 to 10000"]);
    expect(messages(record(Array.from({ length: 10_001 }, () => at("08:00"))))).toEqual(["record.readings (readings, one after the other): 10001 readings: a record has from 2 to 10000"]);
  });

  it("has times that cannot be read, or that the clocks show twice", () => {
    expect(messages(record([{ at: "8 o'clock", temperature: "20 degC" }, { at: "2026-11-01T01:30", temperature: "20 degC" }]))).toEqual([
      expect.stringContaining("record.readings[0].at (time of the reading): \"8 o'clock\": write the date"),
      expect.stringContaining("record.readings[1].at (time of the reading): \"2026-11-01T01:30\": the clocks change"),
    ]);
  });

  it("is hotter than the rule reaches: no extrapolation", () => {
    expect(messages({ ...by, intervals: [{ lasts: "1 h", temperature: "20 degC" }, { lasts: "1 h", temperature: "50 degC" }] })).toEqual([
      "intervals[1].temperature (temperature of the mortar): is 50 degC, but must be at most 120 degF",
    ]);
  });

  it("is given twice, or not at all, or empty", () => {
    expect(faults(equivalentAge.try(by))).toEqual(["either history"]);
    expect(faults(equivalentAge.try({ ...record([at("08:00"), at("09:00")]), intervals: [{ lasts: "1 h", temperature: "20 degC" }] }))).toEqual(["either history"]);
    expect(faults(equivalentAge.try({ ...by, intervals: [] }))).toEqual(["refused intervals"]);
  });

  it("misses or mistakes what its rule needs", () => {
    expect(faults(equivalentAge.try({ rule: "Arrhenius", reference: "20 degC", intervals: [{ lasts: "1 h", temperature: "20 degC" }] }))).toEqual(["missing activation"]);
    expect(faults(equivalentAge.try({ ...by, rule: "doubling", intervals: [{ lasts: "1 h", temperature: "20 degC" }] }))).toEqual(["refused activation"]);
    expect(faults(equivalentAge.try({ ...record([at("08:00"), at("09:00")], { readingIs: "hourly" }) }))).toEqual(["notAChoice record.readingIs"]);
    expect(faults(equivalentAge.try({ ...by, intervals: [{ lasts: "0 h", temperature: "20" }] }))).toEqual(["tooLow intervals.0.lasts", "noUnit intervals.0.temperature"]);
  });
});

it("a warmer record never has a lower age", () => {
  const age = (fahrenheit: number): number => equivalentAge({ ...by, intervals: [{ lasts: "10 h", temperature: `${fahrenheit} degF` }] }).age.toNumber("h");
  const ages = Array.from({ length: 24 }, (_, step) => age(25 + 4 * step));
  expect(ages.every((one, index) => index === 0 || one >= (ages[index - 1] ?? 0))).toBe(true);
});

it("a year of hours is worked out in a few seconds", () => {
  const readings = readingsFrom("2026-01-01T00:00Z", Array.from({ length: 8760 }, (_, hour) => `${(40 + ((hour * 37) % 500) / 10).toFixed(1)} degF`));
  const { age, elapsed } = equivalentAge({ ...by, record: { every: "1 h", readingIs: "mean until the next", readings } });
  expect([elapsed.to("d").toString(), age.to("d").lt(elapsed.to("d"))]).toEqual(["365", true]);
}, 20_000);

it("of a long record with the same fault in every reading the first twenty are told", () => {
  const readings = Array.from({ length: 500 }, (_, hour) => ({ at: `2026-06-01T${String(hour % 24).padStart(2, "0")}:00`, temperature: "20 degC" }));
  expect(faults(equivalentAge.try({ ...by, record: { every: "1 h", readingIs: "momentary", readings } }))).toHaveLength(20);
});
