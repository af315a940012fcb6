import { describe, expect, it } from "vitest";
import { backerRodSize } from "../../src/joints/backer-rod-size.js";
import { faults } from "../support/faults.js";

describe("backerRodSize", () => {
  it("is a quarter over the joint, up to the next eighth (common practice)", () => {
    // 3/8 x 1.25 = 0.469 -> 1/2; 1/2 x 1.25 = 0.625 exactly -> 5/8; 3/4 x 1.25 = 0.9375 -> 1.
    const rod = (width: "3/8 in" | "1/2 in" | "3/4 in"): string => backerRodSize({ width }).rod.toString();
    expect([rod("3/8 in"), rod("1/2 in"), rod("3/4 in")]).toEqual(["0.5 in", "0.625 in", "1 in"]);
  });

  it("takes metric sizes", () => {
    // 12 x 1.25 = 15 mm: with rods by 5 mm exactly 15.
    expect(backerRodSize({ width: "12 mm", sizeStep: "5 mm" }).rod.toString()).toBe("15 mm");
  });

  it("refuses a rod no thicker than the joint", () => {
    expect(faults(backerRodSize.try({ width: "1/2 in", oversize: 0 }))).toEqual(["tooLow oversize"]);
  });
});
