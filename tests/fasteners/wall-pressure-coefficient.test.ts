import { describe, expect, it } from "vitest";
import { wallCoefficientTable } from "../../src/data/wind.js";
import { wallPressureCoefficient } from "../../src/fasteners/wall-pressure-coefficient.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const lines = {
  "GCp+": wallCoefficientTable[4].positive,
  "GCp-zone4": wallCoefficientTable[4].negative,
  "GCp-zone5": wallCoefficientTable[5].negative,
} as const;

const at = (area: string, { small, large }: { readonly small: `${number}`; readonly large: `${number}` }, slopeFactor = 1) =>
  wallPressureCoefficient({ effectiveArea: area as "10 ft2", coefficientAt10: small, coefficientAt500: large, slopeFactor }).coefficient.to();

describe("wallPressureCoefficient", () => {
  it.each(vectors("asce7-gcp-wall-A"))("$inputs.A (ASCE 7-05, -10 and -16, wall figure, as quoted)", ({ inputs, expected }) => {
    for (const [column, line] of Object.entries(lines)) expectPrinted(at(inputs.A ?? "", line), expected[column]);
  });

  it("a roof of 10 degrees and less takes a tenth off", () => {
    const { inputs, expected } = vector("asce7-gcp-flat-roof-10pct");
    expect(lines["GCp-zone5"].small).toBe(inputs.GCp);
    expectPrinted(at("10 ft2", lines["GCp-zone5"], 0.9), expected.GCp);
  });

  it("positive pressure is the same in both zones", () => {
    expect(wallCoefficientTable[5].positive).toEqual(wallCoefficientTable[4].positive);
  });

  // The middle of the line is at sqrt(10 * 500) = 70.71 ft2: half way from -1.4 to -0.8 is -1.1.
  it("runs over the logarithm of the area, not the area", () => {
    expect(at("70.710678118654752440 ft2", lines["GCp-zone5"]).toFixed(12)).toBe("-1.100000000000");
    expect(at("255 ft2", lines["GCp-zone5"]).toFixed(2)).not.toBe("-1.10");
  });

  it("is level beyond both ends of the chart", () => {
    expect(at("0.1 ft2", lines["GCp-zone5"]).toNumber()).toBe(-1.4);
    expect(at("5000 ft2", lines["GCp-zone5"]).toNumber()).toBe(-0.8);
  });

  it("refuses no area", () => {
    const none = wallPressureCoefficient.try({ effectiveArea: "0 ft2", coefficientAt10: 1, coefficientAt500: 0.7, slopeFactor: 0 });
    expect(none).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["effectiveArea"] }, { code: "tooLow", path: ["slopeFactor"] }] });
  });
});
