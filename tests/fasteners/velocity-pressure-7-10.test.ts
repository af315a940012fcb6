import { describe, expect, it } from "vitest";
import { velocityPressure710 } from "../../src/fasteners/velocity-pressure-7-10.js";

const wind = { speed: "100 mph", exposureCoefficient: 0.9, topography: 1, directionality: 0.85 } as const;

describe("velocityPressure710", () => {
  // 0.00256 * 0.9 * 1 * 0.85 * 100^2 = 25.6 * 0.765 = 19.584 psf.
  it("by hand", () => {
    expect(velocityPressure710(wind).velocityPressure.toString()).toBe("19.584 psf");
  });

  it("grows with the topographic factor: 19.584 * 1.2 = 23.5008 psf", () => {
    expect(velocityPressure710({ ...wind, topography: 1.2 }).velocityPressure.toString()).toBe("23.5008 psf");
  });

  it("goes with the square of the speed", () => {
    expect(velocityPressure710({ ...wind, speed: "200 mph" }).velocityPressure.toString()).toBe("78.336 psf");
  });

  it("refuses a topographic factor under 1 and a directionality over 1", () => {
    expect(velocityPressure710.try({ ...wind, topography: 0.99, directionality: 1.01 })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["topography"] }, { code: "tooHigh", path: ["directionality"] }] });
  });
});
