import { describe, expect, it } from "vitest";
import { coursedFace } from "../../src/joints/coursed-face.js";
import { jointByLength } from "../../src/joints/joint-by-length.js";
import { mortarJointLength } from "../../src/joints/mortar-joint-length.js";
import { faults } from "../support/faults.js";
import { expectPrinted } from "../support/vectors.js";

describe("jointByLength", () => {
  it("is length times width times depth: 45 ft of 3/8 by 1/2 is 0.059 ft3", () => {
    // 540 in x 0.375 x 0.5 = 101.25 in3 = 0.05859 ft3
    const joint = jointByLength({ length: "45 ft", width: "3/8 in", depth: "1/2 in" });
    expect(joint.section.toString()).toBe("0.1875 in2");
    expectPrinted(joint.volume.to("ft3"), "0.059");
  });

  it("agrees with the coursed face by the length of its joints", () => {
    const { perArea } = mortarJointLength({ unitLength: "11-5/8 in", unitHeight: "3-5/8 in" });
    const length = { value: perArea.to("ft/ft2").mul(312), unit: "ft" } as const;
    const byFace = coursedFace({ area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" }).volume;
    expect(jointByLength({ length, width: "3/8 in", depth: "3/4 in" }).volume.toJSON()).toEqual(byFace.toJSON());
  });

  it("refuses nought", () => {
    expect(faults(jointByLength.try({ length: "0 ft", width: "0 in", depth: "0 in" }))).toEqual(["tooLow length", "tooLow width", "tooLow depth"]);
  });
});
