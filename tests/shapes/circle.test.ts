import { describe, expect, it } from "vitest";
import { circle } from "../../src/shapes/circle.js";

describe("circle", () => {
  it("of 2 ft across: pi ft2 and 2 pi ft", () => {
    const round = circle({ diameter: "2 ft" });
    expect(round.area.toNumber("ft2")).toBeCloseTo(Math.PI, 14);
    expect(round.perimeter.toNumber("ft")).toBeCloseTo(2 * Math.PI, 14);
  });

  it("refuses a diameter of nought", () => {
    const tried = circle.try({ diameter: "0 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ code }) => code)).toEqual(["tooLow"]);
  });
});
