import { describe, expect, it } from "vitest";
import { rectangle } from "../../src/shapes/rectangle.js";

describe("rectangle", () => {
  it("32 ft by 9 ft: 32 x 9 = 288 ft2, 2 x 41 = 82 ft", () => {
    const wall = rectangle({ width: "32 ft", height: "9 ft" });
    expect([wall.area.toString(), wall.perimeter.toString()]).toEqual(["288 ft2", "82 ft"]);
  });

  it("is exact in mixed units: 10 ft 6 in by 3 m", () => {
    // 126 in x 25.4 mm = 3.2004 m; x 3 m = 9.6012 m2
    expect(rectangle({ width: "10 ft 6 in", height: "3 m" }).area.to("m2").toString()).toBe("9.6012");
  });

  it("refuses a side of nought", () => {
    const tried = rectangle.try({ width: "0 ft", height: "-9 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")])).toEqual([["tooLow", "width"], ["tooLow", "height"]]);
  });
});
