import { describe, expect, it } from "vitest";
import { pullOverTo2016 } from "../../src/fasteners/pull-over-to-2016.js";

const sheet = { thickness: "0.0566 in", headDiameter: "0.4 in", ultimateStress: "65 ksi" } as const;

describe("pullOverTo2016", () => {
  // 1.5 * 0.0566 in * 0.4 in * 65,000 psi = 0.03396 in2 * 65,000 psi = 2207.4 lb.
  it("by hand", () => {
    expect(pullOverTo2016(sheet).nominal.to("lbf").toString()).toBe("2207.4");
  });

  // 1.5 * 0.0566 * 0.5 * 65,000 = 2759.25 lb, however wide the washer.
  it("counts no more than 1/2 in of head, and names what governs", () => {
    const wide = pullOverTo2016.solve({ ...sheet, headDiameter: "1 in" });
    expect(wide.answers.nominal.to("lbf").toString()).toBe("2759.25");
    expect(wide.steps[0]?.governedBy).toBe("greatestHead");
    expect(pullOverTo2016({ ...sheet, headDiameter: "1/2 in" }).nominal.to("lbf").toString()).toBe("2759.25");
  });

  it("refuses no head", () => {
    expect(pullOverTo2016.try({ ...sheet, headDiameter: "0 in" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["headDiameter"] }] });
  });
});
