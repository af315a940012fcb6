import { describe, expect, it } from "vitest";
import { weatheredLoss } from "../../src/joints/weathered-loss.js";
import { faults } from "../support/faults.js";

describe("weatheredLoss", () => {
  it("is a slope from one edge to the other", () => {
    // 3/8 x 1/8 / 2 = 3/128 in2, of 3/8 x 3/4 = 9/32 in2: 1/12.
    const sloped = weatheredLoss({ width: "3/8 in", profileDepth: "1/8 in", depth: "3/4 in" });
    expect(sloped.removed.toString()).toBe("0.0234375 in2");
    expect(sloped.share.toJSON()).toEqual({ value: "25/3", unit: "%" });
  });

  it("refuses a slope as deep as the joint", () => {
    expect(faults(weatheredLoss.try({ width: "3/8 in", profileDepth: "3/4 in", depth: "3/4 in" }))).toEqual(["tooLow left"]);
    expect(faults(weatheredLoss.try({ width: "2 in", profileDepth: "1 in", depth: "3/4 in" }))).toEqual(["tooLow left"]);
    expect(weatheredLoss({ width: "3/8 in", profileDepth: "1/2 in", depth: "3/4 in" }).left.toString()).toBe("0.25 in");
  });
});
