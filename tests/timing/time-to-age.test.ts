import { describe, expect, it } from "vitest";
import { timeToAge } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";
import { readingsFrom, steady } from "./records.js";

const doubling = { rule: "doubling", reference: "70 degF" } as const;

describe("at a temperature that stays", () => {
  it("24 h at 70 degF take 56 h by Arrhenius (5000 K) and 63 h by doubling at 45 degF, by hand", () => {
    // 45 degF = 280.372 K, 70 degF = 294.261 K: 24 exp(5000 (1/280.372 - 1/294.261)) = 24 x 2.321 = 55.7; 24 x 2^(25/18) = 24 x 2.61877 = 62.85
    expect(timeToAge({ age: "24 h", ...doubling, temperature: "45 degF" }).time.to("h").toFixed(2)).toBe("62.85");
    expect(timeToAge({ age: "24 h", rule: "Arrhenius", activation: "5000 K", reference: "70 degF", temperature: "45 degF" }).time.to("h").toFixed(1)).toBe("55.7");
  });

  it("the wait over dry-set mortar of two days is two days at 70 degF, four at 52 degF", () => {
    expect(vector("grout-after-dryset").expected.wait).toBe("usually 2 or more days");
    const days = (temperature: string): string => timeToAge({ age: "2 d", ...doubling, temperature }).time.to("d").toFixed(6);
    expect([days("70 degF"), days("52 degF")]).toEqual(["2.000000", "4.000000"]);
  });

  it("tells the clock where it is told when it began: a float coat of 24 h at 70 degF", () => {
    const { inputs, expected } = vector("float-coat-24h-70F");
    const age = /^\d+ h/.exec(expected.age ?? "")?.[0] ?? "";
    expect(timeToAge({ age, ...doubling, temperature: inputs.T ?? "", start: "2026-06-01T07:00[America/Chicago]" }).reachedAt).toBe("2026-06-02T07:00-05:00[America/Chicago]");
  });
});

describe("under a forecast", () => {
  const record = (temperatures: readonly string[]): object => ({ zone: "America/Chicago", every: "1 h", readingIs: "mean until the next", readings: readingsFrom("2026-06-01T12:00Z", temperatures) });

  it("into the middle of an hour: 1 h at 70 degF, then 88 degF", () => {
    // 1 h of age in the first hour, 2 h of age an hour after: 2 h are reached after 1.5 h
    const found = timeToAge({ age: "2 h", ...doubling, record: record(["70 degF", "88 degF", "88 degF"]) as never });
    expect([found.time.to("h").toFixed(9), found.reachedAt]).toEqual(["1.500000000", "2026-06-01T08:30-05:00[America/Chicago]"]);
  });

  it("from the middle of an hour", () => {
    const found = timeToAge({ age: "2 h", ...doubling, start: "2026-06-01T07:30", record: record(["70 degF", "88 degF", "88 degF"]) as never });
    // half an hour at 70 degF is 0.5 h; 1.5 h of age at 88 degF take 0.75 h
    expect([found.time.to("h").toFixed(9), found.reachedAt]).toEqual(["1.250000000", "2026-06-01T08:45-05:00[America/Chicago]"]);
  });

  it("frost in between brings nothing", () => {
    const found = timeToAge({ age: "2 h", ...doubling, record: record(["70 degF", "20 degF", "31.9 degF", "70 degF"]) as never });
    expect(found.time.to("h").toFixed(9)).toBe("4.000000000");
  });

  it("reaches an age at the very end of it, and none beyond", () => {
    const steadily = { ...doubling, record: record(steady("70 degF", 3)) as never };
    expect(timeToAge({ age: "3 h", ...steadily }).reachedAt).toBe("2026-06-01T10:00-05:00[America/Chicago]");
    const tried = timeToAge.try({ age: "3.01 h", ...steadily });
    expect(tried.ok ? [] : tried.problems.map(({ message }) => message)).toEqual(["record (record of the temperature): has no answer (3 h of 3.01 h by 2026-06-01T10:00-05:00[America/Chicago]), because the record ends before the age is reached"]);
  });

  it("is refused where the beginning does not lie within it", () => {
    for (const start of ["2026-06-01T06:59", "2026-06-01T10:00"]) {
      expect(faults(timeToAge.try({ age: "1 h", ...doubling, start, record: record(steady("70 degF", 3)) }))).toEqual(["refused start"]);
    }
    expect(faults(timeToAge.try({ age: "1 h", ...doubling, start: "2026-06-01T09:59", record: record(steady("70 degF", 3)) }))).toEqual(["noAnswer record"]);
  });
});

it("asks for one of temperature and record", () => {
  expect(faults(timeToAge.try({ age: "1 h", ...doubling }))).toEqual(["either warmth"]);
  expect(faults(timeToAge.try({ age: "1 h", ...doubling, temperature: "125 degF" }))).toEqual(["tooHigh temperature"]);
});

it("warmer never takes longer", () => {
  const times = Array.from({ length: 20 }, (_, step) => timeToAge({ age: "10 h", ...doubling, temperature: `${33 + 4 * step} degF` }).time.toNumber("h"));
  expect(times.every((one, index) => index === 0 || one < (times[index - 1] ?? 0))).toBe(true);
});
