import { describe, expect, it } from "vitest";
import { pullOutTo2016 } from "../../src/fasteners/pull-out-to-2016.js";

describe("pullOutTo2016", () => {
  // 0.85 * 0.0451 in * 0.190 in * 45,000 psi = 0.85 * 0.008569 in2 * 45,000 psi = 327.76425 lb; the sheet has 328 lb.
  it("by hand", () => {
    expect(pullOutTo2016({ thickness: "0.0451 in", screwDiameter: "0.190 in", ultimateStress: "45 ksi" }).nominal.to("lbf").toString()).toBe("327.76425");
  });

  // 0.85 * 1 mm * 5 mm * 300 N/mm2 = 1275 N.
  it("in newtons", () => {
    expect(pullOutTo2016({ thickness: "1 mm", screwDiameter: "5 mm", ultimateStress: "300 MPa" }).nominal.toString()).toBe("1275 N");
  });

  it("refuses nought, all at once", () => {
    const none = pullOutTo2016.try({ thickness: "0 in", screwDiameter: "0 in", ultimateStress: "0 ksi" });
    expect(none.ok ? [] : none.problems.map(({ code, path }) => [code, ...path])).toEqual([["tooLow", "thickness"], ["tooLow", "screwDiameter"], ["tooLow", "ultimateStress"]]);
  });
});
