import { describe, expect, it } from "vitest";
import { elevationFactorSi } from "../../src/fasteners/elevation-factor-si.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("elevationFactorSi", () => {
  it("at 110 m, as an open-source verification test of ASCE 7-16 has it", () => {
    const { inputs, expected } = vector("wind-xc-ke-110m");
    expectPrinted(elevationFactorSi({ elevation: inputs.elevation as "110 m" }).elevationFactor.to(), expected.Ke);
  });

  it("is 1 at sea level and more below it", () => {
    expect(elevationFactorSi({ elevation: "0 m" }).elevationFactor.to().toString()).toBe("1");
    expect(elevationFactorSi({ elevation: "-30 m" }).elevationFactor.to().gt(1)).toBe(true);
  });
});
