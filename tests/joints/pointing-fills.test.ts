import { describe, expect, it } from "vitest";
import { pointingFills } from "../../src/joints/pointing-fills.js";
import { faults } from "../support/faults.js";

describe("pointingFills", () => {
  it("counts fills exactly: a cubic foot is 7-37/77 gal", () => {
    // 7.2 ft3 x 1728 / 57.75 in3 to the quart = 215.4 qt; two quarts a fill: 107.7.
    expect(pointingFills({ volume: "7.2 ft3", pointingBag: "2 qt" }).fills.toString()).toBe("108");
    expect(pointingFills({ volume: "3 gal", pointingBag: "2 qt" }).fills.toString()).toBe("6");
    expect(pointingFills({ volume: "0.3 L", pointingBag: "0.1 L" }).fills.toString()).toBe("3");
  });

  it("refuses a bag that holds nothing", () => {
    expect(faults(pointingFills.try({ volume: "1 ft3", pointingBag: "0 qt" }))).toEqual(["tooLow pointingBag"]);
  });
});
