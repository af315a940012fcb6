import { describe, expect, it } from "vitest";
import { rakedLoss } from "../../src/joints/raked-loss.js";
import { faults } from "../support/faults.js";

describe("rakedLoss", () => {
  it("is a rectangle: its share is its depth over that of the joint", () => {
    const raked = rakedLoss({ width: "3/8 in", profileDepth: "1/4 in", depth: "3/4 in" });
    expect(raked.removed.toString()).toBe("0.09375 in2");
    expect(raked.share.toJSON()).toEqual({ value: "100/3", unit: "%" });
    expect(raked.left.toString()).toBe("0.5 in");
  });

  it("refuses to rake the whole joint out", () => {
    expect(faults(rakedLoss.try({ width: "3/8 in", profileDepth: "3/4 in", depth: "3/4 in" }))).toEqual(["tooLow left"]);
  });
});
