import { describe, expect, it } from "vitest";
import { velocityPressure716 } from "../../src/fasteners/velocity-pressure-7-16.js";
import { vector } from "../support/vectors.js";

describe("velocityPressure716", () => {
  // 0.00256 * 0.9 * 1 * 0.85 * 0.96 * 100^2 = 19.584 * 0.96 = 18.80064 psf.
  it("by hand", () => {
    const wind = { speed: "100 mph", exposureCoefficient: 0.9, topography: 1, directionality: 0.85, elevationFactor: 0.96 } as const;
    expect(velocityPressure716(wind).velocityPressure.toString()).toBe("18.80064 psf");
    // On a hill a fifth more: 18.80064 * 1.2 = 22.560768 psf.
    expect(velocityPressure716({ ...wind, topography: 1.2 }).velocityPressure.toString()).toBe("22.560768 psf");
  });

  it("the SI form of an open-source verification test, 0.613, within its rounding of 0.1 %", () => {
    const { inputs, expected } = vector("wind-xc-qz-6p5m");
    const { velocityPressure } = velocityPressure716({
      speed: inputs.V as "52 m/s", exposureCoefficient: Number(inputs.Kz), topography: Number(inputs.Kzt), directionality: Number(inputs.Kd), elevationFactor: Number(inputs.Ke),
    });
    const printed = Number((expected.qz ?? "").replace(" Pa", ""));
    expect(Math.abs(velocityPressure.toNumber("Pa") / printed - 1)).toBeLessThanOrEqual(0.001);
  });
});
