import { describe, expect, it } from "vitest";
import { gable } from "../../src/shapes/gable.js";
import { rectangle } from "../../src/shapes/rectangle.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("gable", () => {
  it("is half of 12, 5, 13 doubled: a gable 24 ft wide and 5 ft high has rakes of 13 ft", () => {
    // area 24 x 5 / 2 = 60 ft2; 12^2 + 5^2 = 13^2; perimeter 24 + 26 = 50 ft
    const peak = gable({ width: "24 ft", height: "5 ft" });
    expect([peak.area.toString(), peak.rake.toString(), peak.perimeter.toString(), peak.halfWidth.toString()]).toEqual(["60 ft2", "13 ft", "50 ft", "12 ft"]);
  });

  it("gives the wall of the textbook (Pearson, Estimating in Building Construction, 7th ed., example 13-17)", () => {
    const row = vector("textbook-sheathing-40");
    expect(row.inputs).toEqual({ wall: "148 ft x 8 ft", gables: "0.5*24*3*2" });
    const walls = rectangle({ width: "148 ft", height: "8 ft" }).area.to("ft2");
    expectPrinted(walls.plus(gable({ width: "24 ft", height: "3 ft" }).area.to("ft2").times(2)), row.expected.area);
  });

  it("is larger where it is higher, in area in proportion", () => {
    const [low, high] = [gable({ width: "24 ft", height: "5 ft" }), gable({ width: "24 ft", height: "10 ft" })];
    expect(high.area.to("ft2").toString()).toBe(low.area.to("ft2").times(2).toString());
    expect(high.rake.to("ft").gt(low.rake.to("ft"))).toBe(true);
  });

  it("refuses a gable without height", () => {
    const tried = gable.try({ width: "24 ft", height: "0 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "height"]]);
  });
});
