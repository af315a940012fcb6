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
    expect(tried({ days: undefined })).toEqual(["either weather"]);
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
  });

  it("of a year is judged in a few seconds", () => {
    const found = weatherDays({ ...crew, protection: "24 h", record: record(Array.from({ length: 8760 }, (_, hour) => `${20 + ((hour * 7) % 60)} degF`)) });
    expect(found.days).toHaveLength(365);
  }, 30_000);
});
