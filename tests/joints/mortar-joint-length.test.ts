import { describe, expect, it } from "vitest";
import { mortarJointLength } from "../../src/joints/mortar-joint-length.js";
import { faults } from "../support/faults.js";
import { expectPrinted } from "../support/vectors.js";

describe("mortarJointLength", () => {
  it("counts crossings once: 3.90625 ft to the square foot for 11-5/8 x 3-5/8 at 3/8", () => {
    // Level: 1 / (4 in) = 3 ft/ft2. Upright: 3 / ft2 x 3.625 in = 0.90625 ft/ft2.
    const joints = mortarJointLength({ unitLength: "11-5/8 in", unitHeight: "3-5/8 in" });
    expect([joints.bedPerArea, joints.headPerArea, joints.perArea].map(String)).toEqual(["3 ft/ft2", "0.90625 ft/ft2", "3.90625 ft/ft2"]);
  });

  it("gives 69.19 in to the square foot for modular brick, 7-5/8 x 2-1/4 with a bed joint of 5/12 in", () => {
    // Level 144 / (8/3) = 54.00 in/ft2; upright 144 / (8 x 8/3) x 2.25 = 15.19 in/ft2.
    const joints = mortarJointLength({ unitLength: "7-5/8 in", unitHeight: "2-1/4 in", headJoint: "3/8 in", bedJoint: "5/12 in" });
    expectPrinted(joints.bedPerArea.to("ft/ft2").mul(12), "54.00");
    expectPrinted(joints.headPerArea.to("ft/ft2").mul(12), "15.19");
    expectPrinted(joints.perArea.to("ft/ft2").mul(12), "69.19");
  });

  it("refuses a unit of nought", () => {
    expect(faults(mortarJointLength.try({ unitLength: "0 in", unitHeight: "-1 in" }))).toEqual(["tooLow unitLength", "tooLow unitHeight"]);
  });
});
