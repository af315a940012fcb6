import { describe, expect, it } from "vitest";
import { pullOutSince2022 } from "../../src/fasteners/pull-out-since-2022.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("pullOutSince2022", () => {
  it("AISI D110-16, p. 2-23, with the factor of the supplement, as quoted by an open-source library's test", () => {
    const { inputs, expected } = vector("aisi-s100-pullout-2022-306");
    const { nominal } = pullOutSince2022({ thickness: inputs.tc as "0.0451 in", screwDiameter: inputs.d as "0.190 in", ultimateStress: inputs.Fu2 as "45 ksi" });
    expectPrinted(nominal.to("lbf"), expected.Pnot);
  });

  // At one inch the factor is 1.63 itself: 0.85 * 1 * 0.25 * 60,000 * 1.63 = 20,782.5 lb. At 2^-50 in the root of a power
  // of two is a power of two: (2^-50)^0.18 = 2^-9, and 1.63/512 = 0.00318359375.
  it("the factor by hand", () => {
    expect(pullOutSince2022({ thickness: "1 in", screwDiameter: "1/4 in", ultimateStress: "60 ksi" }).nominal.to("lbf").toFixed(4)).toBe("20782.5000");
    const thin = pullOutSince2022({ thickness: { value: "1/1125899906842624", unit: "in" }, screwDiameter: "1/4 in", ultimateStress: "60 ksi" });
    expect(thin.thicknessFactor.to().toFixed(11)).toBe("0.00318359375");
  });

  // The specification writes the metric factor (0.0394 t mm)^0.18, a rounded inch: 1.63 * (0.0394/0.0393700787)^0.18 is
  // more by 0.18 * 0.000759 = 0.014 %.
  it("a thickness in millimetres has the factor of the same thickness in inches, within the rounding of the metric form", () => {
    const metric = pullOutSince2022({ thickness: "1 mm", screwDiameter: "5 mm", ultimateStress: "300 MPa" });
    expect(metric.thicknessFactor.toNumber() / (1.63 * 0.0394 ** 0.18)).toBeCloseTo(1 - 0.000137, 5);
  });
});
