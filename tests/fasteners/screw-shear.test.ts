import { describe, expect, it } from "vitest";
import { screwShear } from "../../src/fasteners/screw-shear.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const before = "AISI S100-07 to S100-16";
const since = "AISI S100-16 w/S3-22";
const lap = { underHead: "steel", steelUnderHead: "54 mil", ultimateStressUnderHead: "65 ksi", steel: "43 mil", ultimateStress: "45 ksi", screwDiameter: "0.19 in" } as const;

describe("screwShear", () => {
  it.each([...vectors("screw-6-18mil"), ...vectors("screw-8-18mil"), ...vectors("screw-10-18mil"), ...vectors("screw-12-18mil"), ...vectors("screw-8-27mil"), ...vectors("screw-12-27mil")])(
    "$id (SSMA, Product Technical Guide)",
    ({ inputs, expected }) => {
      const [thickness, stress] = [inputs["t1=t2=tc"] as "0.0188 in", inputs.Fu as "33 ksi"];
      const { nominal, safetyFactor } = screwShear({
        underHead: "steel", designThicknessUnderHead: thickness, ultimateStressUnderHead: stress, designThickness: thickness, ultimateStress: stress, screwDiameter: inputs.d as "0.138 in", edition: before,
      });
      expectPrinted(nominal.to("lbf").div(safetyFactor.to()), expected.shear);
    },
  );

  it("the editions differ by their factors alone", () => {
    const [earlier, later] = [screwShear({ ...lap, edition: before }), screwShear({ ...lap, edition: since })];
    expect(later.nominal.to("lbf").eq(earlier.nominal.to("lbf"))).toBe(true);
    // The third figure is that of Canada, which is not offered.
    expect(`${later.safetyFactor.to().toFixed(2)} / ${later.resistanceFactor.to().toFixed(2)} / 0.45`).toBe(vector("aisi-s100-factors-2022").expected["tilting/bearing"]);
  });

  it("names what governs, and both where it lies between", () => {
    expect(screwShear({ ...lap, edition: since }).governs).toEqual(["tilting"]);
    // 1.5 to 1, worked out by hand in the test of screwShearInSteel: tilting, and bearing away from the head.
    const between = { underHead: "steel", designThicknessUnderHead: "0.04 in", ultimateStressUnderHead: "90 ksi", designThickness: "0.06 in", ultimateStress: "40 ksi", screwDiameter: "0.24 in" } as const;
    expect(screwShear({ ...between, edition: since }).governs).toEqual(["tilting", "bearing"]);
    // 2.5 to 1: 2.7 * 0.04 * 0.24 * 90,000 = 2332.8 lb is less than 2.7 * 0.1 * 0.24 * 40,000 = 2592 lb.
    expect(screwShear({ ...between, designThickness: "0.1 in", edition: since }).governs).toEqual(["bearing under head"]);
  });

  it("does not name tilting where it counts no more", () => {
    // 3 to 1: tilting 4.2 * sqrt(0.06^3 * 0.24) * 40,000 = 1209.6 lb would be the least, but from 2.5 to 1 on bearing alone
    // counts: 2.7 * 0.06 * 0.24 * 40,000 = 1555.2 lb against 2.7 * 0.02 * 0.24 * 150,000 = 1944 lb under the head.
    const thin = screwShear({ underHead: "steel", designThicknessUnderHead: "0.02 in", ultimateStressUnderHead: "150 ksi", designThickness: "0.06 in", ultimateStress: "40 ksi", screwDiameter: "0.24 in", edition: since });
    expect(thin.governs).toEqual(["bearing"]);
    expect(thin.nominal.toString()).toBe("1555.2 lbf");
  });

  it("cautions", () => {
    expect(screwShear.solve({ ...lap, edition: since }).cautions.join(" ")).toContain("licensed design professional decide");
  });

  it("refuses a board under the head, together with a gauge", () => {
    const board = screwShear.try({ ...lap, underHead: "board", edition: before });
    expect(board).toMatchObject({ ok: false, problems: [{ code: "refused", path: ["underHead"] }] });
    expect(screwShear.try({ ...lap, steelUnderHead: "16 ga", edition: before })).toMatchObject({ ok: false, problems: [{ code: "notAChoice", path: ["steelUnderHead"] }] });
  });

  it("wants each ply once", () => {
    const twice = screwShear.try({ ...lap, designThickness: "0.0451 in", designThicknessUnderHead: "0.0566 in", edition: before });
    expect(twice.ok ? [] : twice.problems.map(({ code, path }) => [code, ...path])).toEqual([["either", "thicknessUnderHead"], ["either", "thickness"]]);
    const { steel, ...open } = lap;
    expect(steel).toBe("43 mil");
    // @ts-expect-error -- the ply away from the head is not given
    expect(() => screwShear({ ...open, edition: before })).toThrow("give exactly one of steel and designThickness");
    // @ts-expect-error -- it is given twice
    expect(() => screwShear({ ...lap, designThickness: "0.0451 in", edition: before })).toThrow("exclude each other");
  });
});
