import { describe, expect, it } from "vitest";
import { ageFactorByDoubling } from "../../src/timing/index.js";
import { faults } from "../support/faults.js";

describe("ageFactorByDoubling", () => {
  it("doubles with each 18 degF, which is 10 degC", () => {
    const factor = (temperature: `${number} degF`): string => ageFactorByDoubling({ temperature, reference: "70 degF" }).ageFactor.to().toFixed(12);
    expect([factor("34 degF"), factor("52 degF"), factor("70 degF"), factor("88 degF"), factor("106 degF")]).toEqual(["0.250000000000", "0.500000000000", "1.000000000000", "2.000000000000", "4.000000000000"]);
    expect(ageFactorByDoubling({ temperature: "25 degC", reference: "20 degC" }).ageFactor.to().pow(2).toFixed(12)).toBe("2.000000000000");
  });

  it("has no answer outside 32 to 120 degF", () => {
    for (const temperature of ["32 degF", "0 degC", "120 degF"]) expect(faults(ageFactorByDoubling.try({ temperature, reference: "70 degF" }))).toEqual([]);
    expect(faults(ageFactorByDoubling.try({ temperature: "31.9 degF", reference: "120.1 degF" }))).toEqual(["tooLow temperature", "tooHigh reference"]);
  });
});
