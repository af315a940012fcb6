import { describe, expect, it } from "vitest";
import { widthForRange } from "../../src/movement/width-for-range.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const sixteenths = (temperatureRange: string): number => {
  const tried = widthForRange.try({ leastWidth: "3/8 in", temperatureRange });
  return tried.ok ? tried.solution.answers.extra.to("in").mul(16).toNumber() : Number.NaN;
};

describe("widthForRange", () => {
  it("adds 1/16 in at a range of 115 degF (tile contractors' page on EJ171)", () => {
    const { inputs, expected } = vector("ej171-115F");
    expect(expected.extra).toBe("1/16 in");
    expect(sixteenths(inputs.range ?? "")).toBe(1);
  });

  it("adds a step with each begun 15 degF over 100 degF, at, just under and just over each", () => {
    expect(["0 degF", "99.999 degF", "100 degF"].map(sixteenths)).toEqual([0, 0, 0]);
    expect(["100.001 degF", "114.999 degF", "115 degF"].map(sixteenths)).toEqual([1, 1, 1]);
    expect(["115.001 degF", "130 degF", "130.001 degF", "145 degF"].map(sixteenths)).toEqual([2, 2, 3, 3]);
  });

  it("counts exactly in metric: 500/9 K are 100 degF", () => {
    expect(widthForRange({ leastWidth: "3/8 in", temperatureRange: { value: "500/9", unit: "K" } } as never).extra.toString()).toBe("0 in");
    // 64 K = 115.2 degF
    expect(sixteenths("64 K")).toBe(2);
  });

  it("refuses no width and less than no range", () => {
    expect(faults(widthForRange.try({ leastWidth: "0 in", temperatureRange: "-1 degF" }))).toEqual(["tooLow leastWidth", "tooLow temperatureRange"]);
  });
});
