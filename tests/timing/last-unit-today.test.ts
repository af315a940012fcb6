import { describe, expect, it } from "vitest";
import { lastUnitToday } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";
import { readingsFrom, steady } from "./records.js";

const record = (temperatures: readonly string[], readingIs = "mean until the next"): never => ({ zone: "America/Chicago", every: "1 h", readingIs, readings: readingsFrom("2026-11-02T14:00Z", temperatures) }) as never;
const cure = { reference: "70 degF", activation: "5000 K" } as const;

describe("lastUnitToday", () => {
  it("at the reference: frost after 30 h, 24 h of age wanted, so 6 h after the beginning", () => {
    // 14:00 UTC is 08:00 in Chicago; frost at 14:00 the next day; the last unit at 14:00 today
    const found = lastUnitToday({ record: record([...steady("70 degF", 30), ...steady("28 degF", 4)]), cure: "24 h", ...cure });
    expect(found).toMatchObject({ lastUnit: "2026-11-02T14:00-06:00[America/Chicago]", freezesAt: "2026-11-03T14:00-06:00[America/Chicago]", before: "frost" });
  });

  it("by both rules; the earlier holds: at 45 degF 24 h take 55.7 h by Arrhenius and 62.85 h by doubling", () => {
    const found = lastUnitToday({ record: record([...steady("45 degF", 70), "31 degF"]), cure: "24 h", ...cure });
    // 70 - 62.85 = 7.15 h after 08:00 is 15:08 to the minute before; 70 - 55.7 = 14.3 h after it is 22:18
    expect(found.byRule.map(({ rule, lastUnit }) => [rule, lastUnit])).toEqual([
      ["doubling", "2026-11-02T15:08-06:00[America/Chicago]"], ["Arrhenius", "2026-11-02T22:18-06:00[America/Chicago]"],
    ]);
    expect(found.lastUnit).toBe("2026-11-02T15:08-06:00[America/Chicago]");
  });

  it("counts back from the frost: a warm morning helps only the units that were set in it", () => {
    // 10 h at 88 degF, then 20 h at 52 degF, and frost at 14:00 the next day. By doubling the cold hours give 10 of 24 h, and 7 h at
    // 88 degF the rest: 27 h before the frost. By Arrhenius exp(5000 x (1/294.261 - 1/T)) is 0.5500 and 1.7480: 20 x 0.55 = 11 h,
    // and 13 / 1.748 = 7.437 h.
    const { byRule } = lastUnitToday({ record: record([...steady("88 degF", 10), ...steady("52 degF", 20), ...steady("28 degF", 4)]), cure: "24 h", ...cure });
    const hoursBefore = byRule.map(({ lastUnit }) => (Date.parse("2026-11-03T14:00-06:00") - Date.parse((lastUnit ?? "").slice(0, 22))) / 3_600_000);
    const factor = (fahrenheit: number): number => Math.exp(5000 * (1 / ((70 + 459.67) / 1.8) - 1 / ((fahrenheit + 459.67) / 1.8)));
    const byHand = [27, 20 + (24 - 20 * factor(52)) / factor(88)];
    // To the minute before.
    hoursBefore.forEach((hours, index) => {
      expect(hours - (byHand[index] ?? 0)).toBeGreaterThan(-1e-9);
      expect(hours - (byHand[index] ?? 0)).toBeLessThan(1.01 / 60);
    });
  });

  it("leaves no time where the wall is too cold for too short: by hand 56 or 63 h are wanted and 18 h are there", () => {
    const { answers, cautions } = lastUnitToday.solve({ record: record([...steady("45 degF", 18), "31 degF"]), cure: "24 h", ...cure });
    expect(answers).not.toHaveProperty("lastUnit");
    // 18 h at 45 degF are 18 / 2.61877 = 6.87 h of age by doubling
    expect(answers.byRule.map(({ ageFromStart }) => ageFromStart.to("h").toFixed(2))).toEqual(["6.87", "7.76"]);
    expect(cautions.some((text) => text.startsWith("Without heat there is no time"))).toBe(true);
  });

  it("leaves time by one rule and not by the other: none is told", () => {
    const found = lastUnitToday({ record: record([...steady("45 degF", 60), "31 degF"]), cure: "24 h", ...cure });
    expect(found.byRule.map(({ lastUnit }) => lastUnit !== undefined)).toEqual([false, true]);
    expect(found).not.toHaveProperty("lastUnit");
  });

  it("without a frost the age is wanted by the end of the record", () => {
    const found = lastUnitToday({ record: record(steady("70 degF", 30)), cure: "24 h", ...cure });
    expect(found).toMatchObject({ before: "end of the record", lastUnit: "2026-11-02T14:00-06:00[America/Chicago]" });
    expect(found).not.toHaveProperty("freezesAt");
  });

  it("32 degF is no frost, anything below is; readings at a moment have it from the reading before", () => {
    const freezes = (temperatures: readonly string[], readingIs?: string): string | undefined => lastUnitToday({ record: record(temperatures, readingIs), cure: "1 h", ...cure }).freezesAt;
    expect(freezes(["50 degF", "40 degF", "32 degF", "33 degF"])).toBeUndefined();
    expect(freezes(["50 degF", "40 degF", "31.9 degF", "33 degF"])).toBe("2026-11-02T10:00-06:00[America/Chicago]");
    expect(freezes(["50 degF", "40 degF", "31.9 degF", "33 degF"], "momentary")).toBe("2026-11-02T09:00-06:00[America/Chicago]");
    expect(freezes(["50 degF", "40 degF", "32 degF", "31.9 degF"], "momentary")).toBe("2026-11-02T10:00-06:00[America/Chicago]");
  });

  it("in frost from the beginning there is no time", () => {
    const found = lastUnitToday({ record: record(["30 degF", "50 degF", "50 degF"]), cure: "1 h", ...cure });
    expect(found.byRule.map(({ ageFromStart }) => ageFromStart.toString())).toEqual(["0 h", "0 h"]);
    expect(found).not.toHaveProperty("lastUnit");
  });

  it("stands on the strength at which a frost does no lasting harm, and says that it is concrete's", () => {
    const { bases, cautions } = lastUnitToday.solve({ record: record(steady("70 degF", 30)), cure: "24 h", ...cure });
    const { expected } = vector("freeze-safe-500psi");
    expect(bases.some((basis) => basis.kind === "published" && basis.says?.includes(expected.strength ?? "-") === true && basis.says.includes(expected.typically ?? "-"))).toBe(true);
    expect(cautions.some((text) => text.includes("taken from concrete"))).toBe(true);
  });

  it("refuses a record with a gap, and a wall hotter than the rules reach", () => {
    const readings = readingsFrom("2026-11-02T14:00Z", steady("50 degF", 5)).filter((_, index) => index !== 2);
    expect(faults(lastUnitToday.try({ record: { every: "1 h", readingIs: "momentary", readings }, cure: "1 h", ...cure }))).toEqual(["refused record.readings.2.at"]);
    expect(faults(lastUnitToday.try({ record: record(["50 degF", "121 degF"]), cure: "1 h", ...cure }))).toEqual(["tooHigh record.readings.1.temperature"]);
  });
});
