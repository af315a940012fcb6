import { describe, expect, it } from "vitest";
import { trapezoid } from "../../src/shapes/trapezoid.js";

describe("trapezoid", () => {
  it("12 ft wide, 8 and 13 ft high: the top is the 13 of 5, 12, 13", () => {
    // area 12 x (8 + 13) / 2 = 126 ft2; perimeter 12 + 8 + 13 + 13 = 46 ft
    for (const [leftHeight, rightHeight] of [["8 ft", "13 ft"], ["13 ft", "8 ft"]] as const) {
      const shed = trapezoid({ width: "12 ft", leftHeight, rightHeight });
      expect([shed.area.toString(), shed.top.toString(), shed.perimeter.toString(), shed.height.toString()]).toEqual(["126 ft2", "13 ft", "46 ft", "13 ft"]);
    }
  });

  it("may come to a point: 4 ft wide, nought and 3 ft high, is a 3, 4, 5 triangle", () => {
    const ramp = trapezoid({ width: "4 ft", leftHeight: "0 ft", rightHeight: "3 ft" });
    expect([ramp.area.toString(), ramp.perimeter.toString()]).toEqual(["6 ft2", "12 ft"]);
  });

  it("refuses a wall without any height", () => {
    const tried = trapezoid.try({ width: "12 ft", leftHeight: "0 ft", rightHeight: "0 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "area"]]);
    expect(trapezoid.try({ width: "12 ft", leftHeight: "0 ft", rightHeight: "0.001 in" }).ok).toBe(true);
  });
});
