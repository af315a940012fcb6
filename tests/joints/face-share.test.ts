import { describe, expect, it } from "vitest";
import { faceShare } from "../../src/joints/face-share.js";
import { faults } from "../support/faults.js";

describe("faceShare", () => {
  it("is a share of the face: a third of 320 ft2 is 320/3 ft2 exactly", () => {
    expect(faceShare({ area: "320 ft2", share: "1/3" }).part.toJSON()).toEqual({ value: "320/3", unit: "ft2" });
    expect(faceShare({ area: "320 ft2", share: 1 }).part.toString()).toBe("320 ft2");
  });

  it("refuses nothing, and more than the whole", () => {
    expect(faults(faceShare.try({ area: "320 ft2", share: 0 }))).toEqual(["tooLow share"]);
    expect(faults(faceShare.try({ area: "320 ft2", share: 60 }))).toEqual(["tooHigh share"]);
  });
});
