import { describe, expect, it } from "vitest";
import { pointingDepth } from "../../src/joints/pointing-depth.js";
import { faults } from "../support/faults.js";

describe("pointingDepth", () => {
  it("is unit and bed less what was pressed out", () => {
    // 1-1/2 + 1/2 - 3/4 = 1-1/4 in
    expect(pointingDepth({ unitThickness: "1-1/2 in", bed: "1/2 in", squeezeOut: "3/4 in" }).depth.toString()).toBe("1.25 in");
  });

  it("is refused where squeeze-out has filled the joint", () => {
    expect(faults(pointingDepth.try({ unitThickness: "1 in", bed: "1/2 in", squeezeOut: "1-1/2 in" }))).toEqual(["tooLow depth"]);
    expect(faults(pointingDepth.try({ unitThickness: "1 in", bed: "1/2 in" }))).toEqual(["missing squeezeOut"]);
  });
});
