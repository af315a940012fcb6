import { describe, expect, it } from "vitest";
import { pullOverSince2022 } from "../../src/fasteners/pull-over-since-2022.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("pullOverSince2022", () => {
  it("AISI D110-16, p. 2-23, as quoted by an open-source library's test", () => {
    const { inputs, expected } = vector("aisi-s100-pullover-1324");
    const { nominal } = pullOverSince2022({ thickness: inputs.t1 as "0.0566 in", headDiameter: inputs["dw'"] as "0.400 in", ultimateStress: inputs.Fu1 as "65 ksi" });
    expectPrinted(nominal.to("lbf"), expected.Pnov);
  });

  // 0.90 * 1 mm * 10 mm * 300 N/mm2 = 2700 N; a head of 20 mm counts as 12.7 mm: 0.90 * 12.7 * 300 = 3429 N.
  it("by hand in newtons", () => {
    expect(pullOverSince2022({ thickness: "1 mm", headDiameter: "10 mm", ultimateStress: "300 MPa" }).nominal.toString()).toBe("2700 N");
    expect(pullOverSince2022({ thickness: "1 mm", headDiameter: "20 mm", ultimateStress: "300 MPa" }).nominal.toString()).toBe("3429 N");
  });
});
