// Leads racked back and what lies between them, by hand.
import { describe, expect, it } from "vitest";
import { bondShift } from "../../src/layout/bond-shift.js";
import { cornerLead } from "../../src/layout/corner-lead.js";
import { leadGap } from "../../src/layout/lead-gap.js";
import { faults } from "../support/faults.js";

const brick = { unitLength: "11-5/8 in", joint: "3/8 in" } as const;

describe("cornerLead", () => {
  it("of one course is as long as its top", () => {
    const { height, footLength } = cornerLead({ courses: 1, courseHeight: "200 mm", topLength: "300 mm", step: "150 mm" });
    expect([height, footLength].map(String)).toEqual(["200 mm", "300 mm"]);
  });

  it("in half bond steps back half a unit and its joint a course", () => {
    // 12 in of unit and joint, half of it 6 in; a top of 11-5/8 in and nine steps of 6 in below it: 65-5/8 in.
    const { shift } = bondShift({ unitLength: brick.unitLength, headJoint: brick.joint, offset: "50 %" });
    const { height, footLength } = cornerLead({ courses: 10, courseHeight: "2-2/3 in", topLength: "11-5/8 in", step: shift });
    expect(footLength.toString()).toBe("65.625 in");
    // Ten courses of which three make 8 in: 80/3 in, 26.67 in.
    expect(height.to("in").toFixed(4)).toBe((80 / 3).toFixed(4));
  });

  it("has whole courses", () => {
    expect(faults(cornerLead.try({ courses: 2.5, courseHeight: "8 in", topLength: "12 in", step: "0 in" }))).toEqual(["notWhole courses", "tooLow step"]);
  });
});

describe("leadGap", () => {
  it("closes on whole units where it is a multiple of a unit and its joint, and one joint more", () => {
    // 3 x 12 + 3/8 = 36-3/8 in.
    const { gap, units, whole, over } = leadGap({ ...brick, wallLength: "100-3/8 in", leftLength: "40 in", rightLength: "24 in" });
    expect([gap, units, whole, over].map(String)).toEqual(["36.375 in", "3", "3", "0 in"]);
  });

  it("tells what is left over for a cut piece and its joint", () => {
    // 38-3/8 in: three units as above and 2 in over: a sliver of 1-5/8 in and a joint.
    const sliver = leadGap({ ...brick, wallLength: "102-3/8 in", leftLength: "40 in", rightLength: "24 in" });
    expect([sliver.whole, sliver.over].map(String)).toEqual(["3", "2 in"]);
  });

  it("grows by both steps from one course to the next", () => {
    const gapOver = (course: number): number => {
      const [leftLength, rightLength] = [{ value: 52 - 6 * course, unit: "in" }, { value: 46 - 6 * course, unit: "in" }] as const;
      return leadGap({ ...brick, wallLength: "150 in", leftLength, rightLength }).gap.toNumber("in");
    };
    expect([0, 1, 2].map(gapOver)).toEqual([52, 64, 76]);
  });

  it("refuses leads that meet, and a gap narrower than a joint", () => {
    expect(faults(leadGap.try({ ...brick, wallLength: "64 in", leftLength: "40 in", rightLength: "24 in" }))).toContain("tooLow gap");
    expect(faults(leadGap.try({ ...brick, wallLength: "64-1/4 in", leftLength: "40 in", rightLength: "24 in" }))).toEqual(["tooLow units"]);
  });
});
