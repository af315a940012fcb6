import { describe, expect, it } from "vitest";
import { openingMeasures } from "../../src/shapes/opening-measures.js";

describe("openingMeasures", () => {
  it("rectangle: 3 ft by 4.5 ft", () => {
    // 13.5 ft2; round 15 ft, of which sill and head 3 ft each, jambs 9 ft
    const { area, perimeter, width, height, sill, jambs, head, round } = openingMeasures({ kind: "rectangle", width: "3 ft", height: "4.5 ft" });
    expect([area, perimeter, width, height, sill, jambs, head, round].map(String)).toEqual(["13.5 ft2", "15 ft", "3 ft", "4.5 ft", "3 ft", "9 ft", "3 ft", "0 ft"]);
  });

  it("arched: a half circle over 3 ft by 4 ft", () => {
    // area 12 + 1.5^2 pi / 2; arch 1.5 pi; round 3 + 8 + 1.5 pi; 5.5 ft high
    const arched = openingMeasures({ kind: "arched", width: "3 ft", height: "4 ft", rise: "1.5 ft" });
    expect(arched.area.toNumber("ft2")).toBeCloseTo(12 + (1.5 ** 2 * Math.PI) / 2, 12);
    expect(arched.head.toNumber("ft")).toBeCloseTo(1.5 * Math.PI, 12);
    expect(arched.perimeter.toNumber("ft")).toBeCloseTo(11 + 1.5 * Math.PI, 12);
    expect([arched.width, arched.height, arched.sill, arched.jambs, arched.round].map(String)).toEqual(["3 ft", "5.5 ft", "3 ft", "8 ft", "0 ft"]);
  });

  it("arched from the sill: a lunette has no jambs", () => {
    const lunette = openingMeasures({ kind: "arched", width: "8 ft", height: "0 ft", rise: "2 ft" });
    expect(lunette.area.toNumber("ft2")).toBeCloseTo(25 * Math.asin(0.8) - 12, 12);
    expect(lunette.jambs.toString()).toBe("0 ft");
  });

  it("round: one side all round, and no other", () => {
    const { area, perimeter, width, height, sill, jambs, head, round } = openingMeasures({ kind: "round", diameter: "2 ft" });
    expect(area.toNumber("ft2")).toBeCloseTo(Math.PI, 12);
    expect(perimeter.toNumber("ft")).toBeCloseTo(2 * Math.PI, 12);
    expect(round.toString()).toBe(perimeter.toString());
    expect([width, height, sill, jambs, head].map(String)).toEqual(["2 ft", "2 ft", "0 ft", "0 ft", "0 ft"]);
  });

  it("has sides that add up to its perimeter", () => {
    const shapes = [
      { kind: "rectangle", width: "900 mm", height: "1.2 m" },
      { kind: "arched", width: "900 mm", height: "1.2 m", rise: "300 mm" },
      { kind: "round", diameter: "600 mm" },
    ] as const;
    for (const shape of shapes) {
      const { sill, jambs, head, round, perimeter } = openingMeasures(shape);
      const sides = [sill, jambs, head, round].map((side) => side.to("mm")).reduce((a, b) => a.plus(b));
      expect(sides.toDecimalPlaces(20).toString()).toBe(perimeter.to("mm").toDecimalPlaces(20).toString());
    }
  });

  it("refuses a rise over a half circle, sizes of nought, and keys of another kind", () => {
    const problemsOf = (shape: unknown): readonly string[] => {
      const tried = openingMeasures.try(shape);
      return tried.ok ? [] : tried.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
    };
    expect(problemsOf({ kind: "arched", width: "3 ft", height: "4 ft", rise: "1.6 ft" })).toEqual(["tooHigh riseShare"]);
    expect(problemsOf({ kind: "round", diameter: "0 ft" })).toEqual(["tooLow diameter"]);
    expect(problemsOf({ kind: "rectangle", width: "3 ft", height: "4 ft", rise: "1 ft" })).toEqual(["unknown rise"]);
    expect(problemsOf({ kind: "square" })).toEqual(["notAChoice kind"]);
  });
});
