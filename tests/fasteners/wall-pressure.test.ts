import { describe, expect, it } from "vitest";
import { wallPressure } from "../../src/fasteners/wall-pressure.js";

const corner = { velocityPressure: "20 psf", externalCoefficient: "-1.4", internalCoefficient: 0.18, leastPressure: "16 psf" } as const;

describe("wallPressure", () => {
  // 20 * (1.4 + 0.18) = 31.6 psf either way; internal pressure is taken where it adds.
  it("adds external and internal, whichever way the wind acts", () => {
    expect(wallPressure(corner).pressure.toString()).toBe("31.6 psf");
    expect(wallPressure({ ...corner, externalCoefficient: 1.4 }).pressure.toString()).toBe("31.6 psf");
  });

  // 10 * 1.58 = 15.8 psf, below 16; 10.2 * 1.58 = 16.116 psf, above.
  it("is not less than the least pressure, and names what governs", () => {
    const low = wallPressure.solve({ ...corner, velocityPressure: "10 psf" });
    expect(low.answers.pressure.toString()).toBe("16 psf");
    expect(low.answers.calculated.toString()).toBe("15.8 psf");
    expect(low.steps.at(-1)?.governedBy).toBe("leastPressure");
    expect(wallPressure({ ...corner, velocityPressure: "10.2 psf" }).pressure.toString()).toBe("16.116 psf");
  });
});
