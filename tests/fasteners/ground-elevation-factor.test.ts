import { describe, expect, it } from "vitest";
import { groundElevationFactor } from "../../src/fasteners/ground-elevation-factor.js";

describe("groundElevationFactor", () => {
  // 0.0000362 * 1,000 = 0.0362 and 0.000119 * 304.8 = 0.0362712.
  it("takes the form that is named", () => {
    expect(groundElevationFactor({ elevation: "1000 ft", form: "US customary" }).elevationFactor.toNumber()).toBeCloseTo(Math.exp(-0.0362), 12);
    expect(groundElevationFactor({ elevation: "1000 ft", form: "SI" }).elevationFactor.toNumber()).toBeCloseTo(Math.exp(-0.0362712), 12);
  });

  it("asks for the form", () => {
    expect(groundElevationFactor.try({ elevation: "110 m" })).toMatchObject({ ok: false, problems: [{ code: "missing", path: ["form"] }] });
  });

  it("refuses an elevation that is not of this earth", () => {
    expect(groundElevationFactor.try({ elevation: "20001 ft", form: "SI" })).toMatchObject({ ok: false, problems: [{ code: "tooHigh", path: ["elevation"] }] });
    expect(groundElevationFactor.try({ elevation: "-1501 ft", form: "SI" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["elevation"] }] });
  });
});
