import { describe, expect, it } from "vitest";
import { vLoss } from "../../src/joints/v-loss.js";
import { faults } from "../support/faults.js";

describe("vLoss", () => {
  it("is a triangle across the joint", () => {
    // 3/8 x 1/4 / 2 = 3/64 in2, of 3/8 x 3/4 = 9/32 in2: 1/6.
    const tooled = vLoss({ width: "3/8 in", profileDepth: "1/4 in", depth: "3/4 in" });
    expect(tooled.removed.toString()).toBe("0.046875 in2");
    expect(tooled.share.toJSON()).toEqual({ value: "50/3", unit: "%" });
  });

  it("refuses a V as deep as the joint", () => {
    expect(faults(vLoss.try({ width: "3/8 in", profileDepth: "3/4 in", depth: "3/4 in" }))).toEqual(["tooLow left"]);
    expect(faults(vLoss.try({ width: "3/8 in", profileDepth: "0 in", depth: "3/4 in" }))).toEqual(["tooLow profileDepth"]);
    // Nor one deeper than the joint, however wide it is.
    expect(faults(vLoss.try({ width: "2 in", profileDepth: "1 in", depth: "3/4 in" }))).toEqual(["tooLow left"]);
    expect(vLoss({ width: "3/8 in", profileDepth: "1/2 in", depth: "3/4 in" }).left.toString()).toBe("0.25 in");
  });
});
