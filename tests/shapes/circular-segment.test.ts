import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { circularSegment } from "../../src/shapes/circular-segment.js";

describe("circularSegment", () => {
  it("8 ft wide with a rise of 2 ft lies on a circle of 5 ft", () => {
    // radius (16 + 4) / (2 x 2) = 5 ft; half angle asin(4 / 5); arc 10 asin 0.8; area 25 asin 0.8 - 8 x 3 / 2
    const arch = circularSegment({ width: "8 ft", rise: "2 ft" });
    expect(arch.radius.toString()).toBe("5 ft");
    expect(arch.halfAngle.toNumber("rad")).toBeCloseTo(Math.asin(0.8), 14);
    expect(arch.arc.toNumber("ft")).toBeCloseTo(10 * Math.asin(0.8), 12);
    expect(arch.area.toNumber("ft2")).toBeCloseTo(25 * Math.asin(0.8) - 12, 12);
    expect(arch.perimeter.toNumber("ft")).toBeCloseTo(8 + 10 * Math.asin(0.8), 12);
  });

  it("is a half circle where the rise is half the width", () => {
    const half = circularSegment({ width: "3 ft", rise: "1.5 ft" });
    expect(half.halfAngle.to("deg").toDecimalPlaces(25).toString()).toBe("90");
    expect(half.arc.toNumber("ft")).toBeCloseTo(1.5 * Math.PI, 12);
    expect(half.area.toNumber("ft2")).toBeCloseTo((1.5 ** 2 * Math.PI) / 2, 12);
  });

  it("refuses a rise over half the width, and nought", () => {
    const codes = (width: string, rise: string): readonly unknown[] => {
      const tried = circularSegment.try({ width, rise });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes("8 ft", "4.0001 ft")).toEqual([["tooHigh", "riseShare"]]);
    expect(codes("8 ft", "0 ft")).toEqual([["tooLow", "rise"]]);
  });

  it("has an area near that of the parabola of its width and rise, and an arc longer than its width", () => {
    // The parabola has 2/3 of width times rise; the circle is fuller, by 18 % at a half circle (pi/8 to 1/3).
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 1000 }), fc.integer({ min: 1, max: 50 }), (width, share) => {
        const rise = (width * share) / 100;
        const arch = circularSegment({ width: { value: width, unit: "in" }, rise: { value: rise, unit: "in" } });
        const parabola = (2 / 3) * width * rise;
        expect(arch.area.toNumber("in2")).toBeGreaterThan(parabola * 0.9999);
        expect(arch.area.toNumber("in2")).toBeLessThan(parabola * 1.1782);
        expect(arch.arc.toNumber("in")).toBeGreaterThan(width);
        expect(arch.arc.toNumber("in")).toBeLessThan(width * 1.5709);
      }),
      { numRuns: 50 },
    );
  });
});
