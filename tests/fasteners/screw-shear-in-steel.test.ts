import { describe, expect, it } from "vitest";
import { screwShearInSteel } from "../../src/fasteners/screw-shear-in-steel.js";
import { expectPrinted, vector } from "../support/vectors.js";

const lap = { thicknessUnderHead: "0.0566 in", ultimateStressUnderHead: "65 ksi", thickness: "0.0451 in", ultimateStress: "45 ksi", screwDiameter: "0.19 in" } as const;

describe("screwShearInSteel", () => {
  it("AISI D110-16, p. 1-31, tilting, as quoted by an open-source library's test", () => {
    const { inputs, expected } = vector("aisi-d110-tilting-789");
    const answers = screwShearInSteel({ ...lap, thickness: inputs.t2 as "0.0451 in", screwDiameter: inputs.d as "0.190 in", ultimateStress: inputs.Fu2 as "45 ksi" });
    expectPrinted(answers.tilting.to("lbf"), expected.Pnv);
    expectPrinted(answers.nominal.to("lbf"), expected.Pnv);
  });

  // The same lap in the same guide: 2.7 * 0.0566 * 0.19 * 65,000 = 1887.3 lb, 2.7 * 0.0451 * 0.19 * 45,000 = 1041.1 lb.
  it("bearing of both plies, by hand: 1887 lb and 1041 lb", () => {
    const answers = screwShearInSteel(lap);
    expect(answers.bearingUnderHead.to("lbf").toString()).toBe("1887.327");
    expect(answers.bearing.to("lbf").toString()).toBe("1041.1335");
  });

  it("33 mil under the head, 54 mil behind: bearing under the head governs at both ends", () => {
    const { inputs, expected } = vector("screw-shear-interpolation");
    const answers = screwShearInSteel({
      thicknessUnderHead: inputs.t1 as "0.0346 in", ultimateStressUnderHead: inputs.Fu1 as "45 ksi",
      thickness: inputs.t2 as "0.0566 in", ultimateStress: inputs.Fu2 as "65 ksi", screwDiameter: inputs.d as "0.164 in",
    });
    expectPrinted(answers.withTilting.to("lbf"), expected["Pnv(t2/t1<=1)"]);
    expectPrinted(answers.withoutTilting.to("lbf"), expected["Pnv(t2/t1>=2.5)"]);
    expectPrinted(answers.nominal.to("lbf"), expected.Pnv);
  });

  // t1 = 0.04 in of 90 ksi, t2 = 0.06 in of 40 ksi, d = 0.24 in: ratio 1.5, so a third of the way from 1 to 2.5.
  // Tilting 4.2 * sqrt(0.000216 * 0.24) * 40,000 = 4.2 * 0.0072 * 40,000 = 1209.6 lb.
  // Bearing 2.7 * 0.04 * 0.24 * 90,000 = 2332.8 lb and 2.7 * 0.06 * 0.24 * 40,000 = 1555.2 lb.
  // 1209.6 + (1555.2 - 1209.6)/3 = 1324.8 lb.
  it("between the two ends by hand", () => {
    const between = { thicknessUnderHead: "0.04 in", ultimateStressUnderHead: "90 ksi", thickness: "0.06 in", ultimateStress: "40 ksi", screwDiameter: "0.24 in" } as const;
    expect(screwShearInSteel(between).nominal.to("lbf").toFixed(6)).toBe("1324.800000");
  });

  // t2 = 0.09 in of 45 ksi, d = 0.16 in: tilting 4.2 * sqrt(0.000729 * 0.16) * 45,000 = 4.2 * 0.0108 * 45,000 = 2041.2 lb,
  // bearing 2.7 * 0.09 * 0.16 * 45,000 = 1749.6 lb; under the head 2.7 * 0.1 * 0.16 * 65,000 = 2808 lb.
  it("bearing of the ply away from the head governs where it is thick for its screw", () => {
    const thick = { thicknessUnderHead: "0.1 in", ultimateStressUnderHead: "65 ksi", thickness: "0.09 in", ultimateStress: "45 ksi", screwDiameter: "0.16 in" } as const;
    expect(screwShearInSteel(thick).nominal.toString()).toBe("1749.6 lbf");
  });

  it("at equal plies tilting counts in full, from 2.5 on not at all", () => {
    const share = (thickness: "0.04 in" | "0.03 in" | "0.1 in" | "0.2 in" | "0.0999 in"): number => screwShearInSteel({ ...lap, thicknessUnderHead: "0.04 in", thickness }).wayBetween.toNumber();
    expect([share("0.03 in"), share("0.04 in"), share("0.1 in"), share("0.2 in")]).toEqual([0, 0, 1, 1]);
    expect(share("0.0999 in")).toBeLessThan(1);
  });
});
