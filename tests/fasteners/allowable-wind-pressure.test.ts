import { describe, expect, it } from "vitest";
import { allowableWindPressure } from "../../src/fasteners/allowable-wind-pressure.js";

describe("allowableWindPressure", () => {
  // 0.6 * 16 = 9.6 psf; the factor itself is not checked, and says why.
  it("is 0.6 of the strength level, which says that it is from memory", () => {
    const solution = allowableWindPressure.solve({ strengthPressure: "16 psf" });
    expect(solution.answers.pressure.toString()).toBe("9.6 psf");
    expect(solution.bases.map(({ kind }) => kind)).toEqual(["from memory"]);
  });
});
