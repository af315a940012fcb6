import { describe, expect, it } from "vitest";
import { velocityPressure705 } from "../../src/fasteners/velocity-pressure-7-05.js";

describe("velocityPressure705", () => {
  // 0.00256 * 0.9 * 1 * 0.85 * 1.15 * 100^2 = 19.584 * 1.15 = 22.5216 psf. The importance factor is from memory.
  it("by hand, and says what is from memory", () => {
    const solution = velocityPressure705.solve({ speed: "100 mph", exposureCoefficient: 0.9, topography: 1, directionality: 0.85, importance: 1.15 });
    expect(solution.answers.velocityPressure.toString()).toBe("22.5216 psf");
    // On a hill a fifth more: 22.5216 * 1.2 = 27.02592 psf.
    expect(velocityPressure705({ speed: "100 mph", exposureCoefficient: 0.9, topography: 1.2, directionality: 0.85, importance: 1.15 }).velocityPressure.toString()).toBe("27.02592 psf");
    expect(solution.bases.some(({ kind }) => kind === "from memory")).toBe(true);
  });
});
