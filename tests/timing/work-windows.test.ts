import { describe, expect, it } from "vitest";
import { usualHolds, workWindows } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";
import { readingsFrom, steady } from "./records.js";

const rule = { rule: "doubling", reference: "70 degF" } as const;
const record = (temperatures: readonly string[]): never => ({ zone: "America/Chicago", every: "1 h", readingIs: "mean until the next", readings: readingsFrom("2026-06-01T13:00Z", temperatures) }) as never;

describe("workWindows", () => {
  it("at the reference: the usual holds of the trade, by the clock", () => {
    const done = "2026-06-01T08:00";
    const { windows } = workWindows({
      ...rule, record: record(steady("70 degF", 200)),
      holds: [
        { work: "ledger", done, least: usualHolds.ledger.least, typical: usualHolds.ledger.typical, most: usualHolds.ledger.most },
        { work: "washing", done, least: usualHolds.washing.least, typical: usualHolds.washing.typical },
        { work: "tooling", done, least: usualHolds.tooling.least, most: usualHolds.tooling.most },
      ],
    });
    expect(windows.map(({ work, earliest, typical, latest }) => [work, earliest, typical, latest])).toEqual([
      ["ledger", "2026-06-02T00:00-05:00[America/Chicago]", "2026-06-02T08:00-05:00[America/Chicago]", "2026-06-03T08:00-05:00[America/Chicago]"],
      ["washing", "2026-06-03T08:00-05:00[America/Chicago]", "2026-06-08T08:00-05:00[America/Chicago]", undefined],
      ["tooling", "2026-06-01T08:20-05:00[America/Chicago]", undefined, "2026-06-01T09:30-05:00[America/Chicago]"],
    ]);
  });

  it("the holds agree with what is in print", () => {
    expect(vector("clean-48h").expected.wait).toContain(usualHolds.washing.least);
    const panel = vector("clean-test-panel").expected;
    expect(usualHolds.washing.test).toContain(panel.area);
    expect([panel.wait, usualHolds.washing.test.endsWith("after a week")]).toEqual(["at least 1 week", true]);
  });

  it("cold hours are short hours: 16 h at 70 degF take 32 h at 52 degF", () => {
    const { windows } = workWindows({ ...rule, record: record(steady("52 degF", 40)), holds: [{ work: "ledger", done: "2026-06-01T08:00", least: "16 h" }] });
    expect(windows[0]?.earliest).toBe("2026-06-02T16:00-05:00[America/Chicago]");
  });

  it("rounds an earliest up and a latest down", () => {
    // at 80 degF 20 min take 20 x 2^(-10/18) = 13.61 min, 90 min take 61.24 min
    const { windows } = workWindows({ ...rule, record: record(steady("80 degF", 4)), holds: [{ work: "tooling", done: "2026-06-01T08:00", least: "20 min", most: "90 min" }] });
    expect([windows[0]?.earliest, windows[0]?.latest]).toEqual(["2026-06-01T08:14-05:00[America/Chicago]", "2026-06-01T09:01-05:00[America/Chicago]"]);
  });

  it("tells nothing that the record does not reach, and says so", () => {
    const { answers, cautions } = workWindows.solve({ ...rule, record: record(steady("70 degF", 20)), holds: [{ work: "pointing", done: "2026-06-01T08:00", least: "16 h", typical: "24 h", most: "72 h" }] });
    expect(Object.keys(answers.windows[0] ?? {})).toEqual(["work", "done", "earliest", "test"]);
    expect(cautions.filter((text) => text.includes("before pointing is through its window"))).toHaveLength(1);
  });

  it("every work has its test", () => {
    const holds = (Object.keys(usualHolds) as (keyof typeof usualHolds)[]).map((work) => ({ work, done: "2026-06-01T08:00", least: "1 h" }));
    const { windows } = workWindows({ ...rule, record: record(steady("70 degF", 3)), holds });
    expect(windows.map(({ test }) => test.length > 10)).toEqual(holds.map(() => true));
  });

  it("refuses waits that do not rise, a time outside the record, a work that is none", () => {
    const windows = (hold: object): readonly string[] => faults(workWindows.try({ ...rule, record: record(steady("70 degF", 3)), holds: [{ work: "coat", done: "2026-06-01T08:00", least: "1 h", ...hold }] }));
    expect(windows({ typical: "30 min", most: "20 min" })).toEqual(["tooLow holds.0.typical", "tooLow holds.0.most"]);
    expect(windows({ done: "2026-06-01T07:59" })).toEqual(["refused holds.0.done"]);
    expect(windows({ done: "yesterday" })).toEqual(["refused holds.0.done"]);
    expect(windows({ work: "sealing" })).toEqual(["notAChoice holds.0.work"]);
  });
});
