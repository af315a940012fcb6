import { describe, expect, it } from "vitest";
import { archedOpening } from "../../src/shapes/arched-opening.js";

describe("archedOpening", () => {
  it("adds the arch to the rectangle under it", () => {
    // area 3 x 4 + 2.1 = 14.1 ft2; jambs 8 ft; perimeter 3 + 8 + 3.7 = 14.7 ft
    const window = archedOpening({ width: "3 ft", height: "4 ft", archArea: "2.1 ft2", arc: "3.7 ft" });
    expect([window.area.toString(), window.jambs.toString(), window.perimeter.toString()]).toEqual(["14.1 ft2", "8 ft", "14.7 ft"]);
  });

  it("may spring from its sill", () => {
    const lunette = archedOpening({ width: "3 ft", height: "0 ft", archArea: "2.1 ft2", arc: "3.7 ft" });
    expect([lunette.area.toString(), lunette.jambs.toString()]).toEqual(["2.1 ft2", "0 ft"]);
  });

  it("refuses an arch without area or length", () => {
    const tried = archedOpening.try({ width: "3 ft", height: "4 ft", archArea: "0 ft2", arc: "0 ft" });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["archArea", "arc"]);
  });
});
