import { describe, expect, it } from "vitest";
import { cutInRun } from "../../src/layout/cut-in-run.js";
import { halfUnit } from "../../src/layout/half-unit.js";
import { jointForCut } from "../../src/layout/joint-for-cut.js";
import { faults } from "../support/faults.js";

const run = { run: "30 in", wholeTotal: "22-7/8 in", joints: 4, joint: "3/8 in", cuts: 1 } as const;

describe("cutInRun", () => {
  it("fills what whole units and joints leave", () => {
    // 30 - 22-7/8 - 4 x 3/8 = 5-5/8; in two pieces 2-13/16.
    expect(cutInRun(run).cut.toString()).toBe("5.625 in");
    expect(cutInRun({ ...run, cuts: 2 }).cut.toString()).toBe("2.8125 in");
    expect(cutInRun({ run: "762 mm", wholeTotal: "0.6 m", joints: 4, joint: "10 mm", cuts: 1 }).cut.toString()).toBe("122 mm");
  });

  it("refuses a run that is full", () => {
    expect(faults(cutInRun.try({ ...run, run: "24-3/8 in" }))).toEqual(["tooLow cut"]);
    expect(faults(cutInRun.try({ ...run, joints: -1, cuts: 0 }))).toEqual(["tooLow joints", "tooLow cuts"]);
  });
});

describe("jointForCut", () => {
  it("undoes cutInRun", () => {
    // 30 - 22-7/8 - 6 = 1-1/8 over four joints.
    expect(jointForCut({ run: "30 in", wholeTotal: "22-7/8 in", cuts: 1, cut: "6 in", joints: 4 }).joint.toJSON().value).toBe("9/32");
    expect(cutInRun({ ...run, joint: "9/32 in" }).cut.toString()).toBe("6 in");
    expect(faults(jointForCut.try({ run: "30 in", wholeTotal: "22-7/8 in", cuts: 1, cut: "7-1/4 in", joints: 4 }))).toEqual(["tooLow joint"]);
    expect(faults(jointForCut.try({ run: "30 in", wholeTotal: "22-7/8 in", cuts: 1, cut: "6 in", joints: 0 }))).toEqual(["tooLow joints"]);
  });
});

describe("halfUnit", () => {
  it("makes a whole with another half and the joint between", () => {
    const { half } = halfUnit({ unit: "11-5/8 in", joint: "3/8 in" });
    expect(half.to("in").times(2).plus(0.375).toString()).toBe("11.625");
    expect(halfUnit({ unit: "290 mm", joint: "10 mm" }).half.toString()).toBe("140 mm");
  });

  it("refuses a joint as wide as the unit", () => {
    expect(faults(halfUnit.try({ unit: "3/8 in", joint: "3/8 in" }))).toEqual(["tooLow half"]);
  });
});
