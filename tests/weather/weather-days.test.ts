import { describe, expect, it } from "vitest";
import { weatherDays } from "../../src/weather/index.js";
import { faults } from "../support/faults.js";
import { readingsFrom, steady } from "../timing/records.js";

const crew = { shift: { from: "07:00", until: "15:30" }, stopBelow: "25 degF", heatBelow: "40 degF" } as const;
const told = (found: ReturnType<typeof weatherDays>): readonly string[] => found.days.map(({ date, state }) => `${date} ${state}`);

describe("days given one by one", () => {
  const day = (date: string, low: string, high: string): { readonly date: string; readonly low: string; readonly high: string } => ({ date, low, high });

  it("lost and heated apart, at the edges", () => {
    const found = weatherDays({
      ...crew, stopAbove: "105 degF", protection: "0 h",
      days: [day("2026-12-01", "40 degF", "60 degF"), day("2026-12-02", "39.9 degF", "60 degF"), day("2026-12-03", "25 degF", "30 degF"), day("2026-12-04", "24.9 degF", "30 degF"), day("2026-12-05", "80 degF", "105 degF"), day("2026-12-06", "80 degF", "105.1 degF")],
    });
    expect(told(found)).toEqual(["2026-12-01 work", "2026-12-02 heated", "2026-12-03 heated", "2026-12-04 lost", "2026-12-05 work", "2026-12-06 lost"]);
    expect([found.workDays, found.heatedDays, found.lostDays].map(String)).toEqual(["2", "2", "2"]);
  });

  it("protection of 24 h runs into the next shift, 15.5 h does not; it does not run on by itself", () => {
    const days = [day("2026-12-01", "35 degF", "45 degF"), day("2026-12-02", "50 degF", "60 degF"), day("2026-12-03", "50 degF", "60 degF")];
    // a shift of 8.5 h leaves 15.5 h to the next
    expect(told(weatherDays({ ...crew, protection: "24 h", days }))).toEqual(["2026-12-01 heated", "2026-12-02 heated", "2026-12-03 work"]);
    expect(told(weatherDays({ ...crew, protection: "15.5 h", days }))).toEqual(["2026-12-01 heated", "2026-12-02 work", "2026-12-03 work"]);
  });

  it("does not run over days that are not there", () => {
    const days = [day("2026-12-04", "35 degF", "45 degF"), day("2026-12-07", "50 degF", "60 degF")];
    expect(told(weatherDays({ ...crew, protection: "24 h", days }))).toEqual(["2026-12-04 heated", "2026-12-07 work"]);
  });

  it("refuses days out of order or twice, a high below the low, a shift over midnight", () => {
    const tried = (change: object): readonly string[] => faults(weatherDays.try({ ...crew, protection: "24 h", days: [day("2026-12-01", "35 degF", "45 degF")], ...change }));
    expect(tried({ days: [day("2026-12-02", "35 degF", "45 degF"), day("2026-12-02", "50 degF", "45 degF")] })).toEqual(["refused days.1.date", "refused days.1.high"]);
    expect(tried({ days: [] })).toEqual(["refused days"]);
    expect(tried({ days: [day("2026-13-01", "35 degF", "45 degF")] })).toEqual(["refused days.0.date"]);
    expect(tried({ shift: { from: "22:00", until: "06:00" } })).toEqual(["refused shift.until"]);
    expect(tried({ shift: { from: "7", until: "24:00" } })).toEqual(["refused shift.from", "refused shift.until"]);
    expect(tried({ heatBelow: "24 degF" })).toEqual(["tooLow heatBelow"]);
    expect(tried({ heatBelow: "25 degF" })).toEqual([]);
    expect(tried({ days: undefined })).toEqual(["either weather"]);
    expect(tried({ shift: { from: "07:00", until: "07:00" } })).toEqual(["refused shift.until"]);
  });

  it("takes a day of one temperature, and wants either days or a record, not both", () => {
    const one = { ...crew, protection: "0 h", days: [day("2026-12-01", "45 degF", "45 degF")] } as const;
    expect(told(weatherDays(one))).toEqual(["2026-12-01 work"]);
    const both = weatherDays.try({ ...one, record: { zone: "America/Chicago", every: "1 h", readings: readingsFrom("2026-12-01T06:00Z", steady("45 degF", 24)) } });
    expect(faults(both)).toEqual(["either weather"]);
    expect(both.ok ? "" : both.problems[0]?.message).not.toContain("none is given");
    const neither = weatherDays.try({ ...one, days: undefined });
    expect(neither.ok ? "" : neither.problems[0]?.message).toContain("none is given");
  });

  it("protection of half an hour more than the night between two shifts runs into the next one", () => {
    const days = [day("2026-12-01", "35 degF", "45 degF"), day("2026-12-02", "50 degF", "60 degF")];
    expect(told(weatherDays({ ...crew, protection: "16 h", days }))).toEqual(["2026-12-01 heated", "2026-12-02 heated"]);
  });

  it("takes ten years of days, and says so where there are more", () => {
    const days = (count: number): never => Array.from({ length: count }, (_, index) => day(new Date(Date.UTC(2017, 0, 1) + index * 86_400_000).toISOString().slice(0, 10), "45 degF", "50 degF")) as never;
    // Ten years have 3,652 or 3,653 days; a week more is taken.
    expect(weatherDays({ ...crew, protection: "0 h", days: days(3660) }).workDays.toString()).toBe("3660");
    const tried = weatherDays.try({ ...crew, protection: "0 h", days: days(3661) });
    expect(faults(tried)).toEqual(["refused days"]);
    expect(tried.ok ? "" : tried.problems[0]?.message).toMatch(/3,?661 days.*3,?660/);
  });
});

describe("a record", () => {
  // From midnight to midnight in Chicago (06:00 UTC in winter), an hour each.
  const record = (temperatures: readonly string[], start = "2026-12-01T06:00Z"): never => ({ zone: "America/Chicago", every: "1 h", readings: readingsFrom(start, temperatures) }) as never;
  const day = (night: string, shift: string, evening: string): readonly string[] => [...steady(night, 7), ...steady(shift, 9), ...steady(evening, 8)];

  it("goes by the hours of the shift; a cold night before it is not its matter", () => {
    const found = weatherDays({ ...crew, protection: "0 h", record: record([...day("10 degF", "45 degF", "45 degF"), ...day("45 degF", "20 degF", "45 degF")]) });
    expect(told(found)).toEqual(["2026-12-01 work", "2026-12-02 lost"]);
  });

  it("a cold night after the shift heats the day while fresh work is protected", () => {
    const nights = record([...day("45 degF", "50 degF", "30 degF"), ...day("45 degF", "50 degF", "45 degF")]);
    expect(told(weatherDays({ ...crew, protection: "8 h", record: nights }))).toEqual(["2026-12-01 heated", "2026-12-02 work"]);
    expect(told(weatherDays({ ...crew, protection: "24 h", record: nights }))).toEqual(["2026-12-01 heated", "2026-12-02 heated"]);
    expect(told(weatherDays({ ...crew, protection: "0 h", record: nights }))).toEqual(["2026-12-01 work", "2026-12-02 work"]);
  });

  it("an hour that reaches into the shift counts, the hour after its end does not", () => {
    const hours = [...steady("50 degF", 7), ...steady("50 degF", 9), "20 degF", ...steady("50 degF", 7)];
    // 16:00 is after 15:30; 15:00 to 16:00 is not
    expect(told(weatherDays({ ...crew, protection: "0 h", record: record(hours) }))).toEqual(["2026-12-01 work"]);
    expect(told(weatherDays({ ...crew, protection: "0 h", record: record([...steady("50 degF", 15), "20 degF", ...steady("50 degF", 8)]) }))).toEqual(["2026-12-01 lost"]);
  });

  it("tells the lowest and the highest hour of the shift, and loses a day to heat", () => {
    // 07:00 to 15:30: the hours from 07:00 to 15:00.
    const hours = ["48 degF", "60 degF", "75 degF", "90 degF", "106 degF", "101 degF", "95 degF", "88 degF", "80 degF"];
    const hot = record([...steady("110 degF", 7), ...hours, ...steady("120 degF", 8)]);
    const [only] = weatherDays({ ...crew, stopAbove: "105 degF", protection: "0 h", record: hot }).days;
    expect([only?.low, only?.high, only?.state].map(String)).toEqual(["48 degF", "106 degF", "lost"]);
    const [cool] = weatherDays({ ...crew, stopAbove: "106 degF", protection: "0 h", record: hot }).days;
    expect(cool?.state).toBe("work");
  });

  it("covers a shift that begins with its first reading and ends with its last, and has no caution then", () => {
    // 07:00 in Chicago is 13:00 UTC; a shift up to 16:00 has nine hours, and the hour from 16:00 on is not its own.
    const nine = { ...crew, shift: { from: "07:00", until: "16:00" }, protection: "0 h" } as const;
    const { answers, cautions } = weatherDays.solve({ ...nine, record: record(steady("50 degF", 9), "2026-12-01T13:00Z") });
    expect(told(answers)).toEqual(["2026-12-01 work"]);
    expect(cautions.filter((text) => /not counted|ends before the protection/.test(text))).toEqual([]);
    expect(told(weatherDays({ ...nine, record: record([...steady("50 degF", 9), "20 degF"], "2026-12-01T13:00Z") }))).toEqual(["2026-12-01 work"]);
    for (const [hours, start] of [[8, "2026-12-01T13:00Z"], [9, "2026-12-01T14:00Z"]] as const) expect(faults(weatherDays.try({ ...nine, record: record(steady("50 degF", hours), start) }))).toEqual(["refused record"]);
  });

  it("days that are not covered in full are not counted, and it says so", () => {
    const { answers, cautions } = weatherDays.solve({ ...crew, protection: "24 h", record: record(steady("50 degF", 40), "2026-12-01T18:00Z") });
    expect(told(answers)).toEqual(["2026-12-02 work"]);
    expect(cautions.filter((text) => /not counted|ends before the protection/.test(text))).toHaveLength(2);
    expect(faults(weatherDays.try({ ...crew, protection: "24 h", record: record(steady("50 degF", 5)) }))).toEqual(["refused record"]);
  });

  it("keeps the shift at its time of day where the clocks change", () => {
    // Chicago, 8 March 2026: midnight is 06:00 UTC, 07:00 is 12:00 UTC. The hour before the shift is 11:00 UTC.
    const cold = Array.from({ length: 24 }, (_, hour) => (hour === 5 ? "20 degF" : "50 degF"));
    expect(told(weatherDays({ ...crew, protection: "0 h", record: record(cold, "2026-03-08T06:00Z") }))).toEqual(["2026-03-08 work"]);
    const colder = Array.from({ length: 24 }, (_, hour) => (hour === 6 ? "20 degF" : "50 degF"));
    expect(told(weatherDays({ ...crew, protection: "0 h", record: record(colder, "2026-03-08T06:00Z") }))).toEqual(["2026-03-08 lost"]);
  });

  it("refuses a shift that begins or ends at an hour which the clocks leave out or show twice on a day of the record", () => {
    // Chicago, 2026: no 02:30 on 8 March, two of 01:30 on 1 November.
    const mild = (start: string): never => record(steady("50 degF", 48), start);
    const tried = (from: string, until: string, start: string): readonly string[] => faults(weatherDays.try({ ...crew, shift: { from, until }, protection: "0 h", record: mild(start) }));
    expect(tried("02:30", "10:00", "2026-03-08T06:00Z")).toEqual(["refused shift.from"]);
    expect(tried("00:00", "02:30", "2026-03-08T06:00Z")).toEqual(["refused shift.until"]);
    expect(tried("01:30", "10:00", "2026-11-01T05:00Z")).toEqual(["refused shift.from"]);
    // The shift of the day after may not begin at such an hour either: protection is held against its beginning.
    expect(tried("02:30", "10:00", "2026-03-07T06:00Z")).toEqual(["refused shift.from"]);
    expect(tried("03:00", "10:00", "2026-03-08T06:00Z")).toEqual([]);
    const says = (from: string, until: string): string => {
      const refused = weatherDays.try({ ...crew, shift: { from, until }, protection: "0 h", record: mild("2026-03-08T06:00Z") });
      return refused.ok ? "" : (refused.problems[0]?.message ?? "");
    };
    expect([says("02:30", "10:00"), says("00:00", "02:30")]).toEqual([expect.stringContaining("beginning of the shift"), expect.stringContaining("end of the shift")]);
  });

  it("of a year is judged in a few seconds", () => {
    const found = weatherDays({ ...crew, protection: "24 h", record: record(Array.from({ length: 8760 }, (_, hour) => `${20 + ((hour * 7) % 60)} degF`)) });
    expect(found.days).toHaveLength(365);
  }, 30_000);
});
