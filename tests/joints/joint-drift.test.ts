// Ten joints under a tape, by hand.
import { describe, expect, it } from "vitest";
import { jointDrift } from "../../src/joints/joint-drift.js";
import { faults } from "../support/faults.js";

const ten = { unitsTotal: "76-1/4 in", joints: 10, jointWanted: "3/8 in", jointsToGo: 0 } as const;

describe("jointDrift", () => {
  it("is nought where ten courses of 8 in measure 80 in", () => {
    // Ten units of 7-5/8 in are 76-1/4 in; 80 - 76-1/4 = 3-3/4 in, a tenth of it 3/8 in.
    const { meanJoint, drift, offNow, offAtEnd } = jointDrift({ ...ten, taped: "80 in" });
    expect([meanJoint, drift, offNow, offAtEnd].map(String)).toEqual(["0.375 in", "0 in", "0 in", "0 in"]);
  });

  it("a quarter inch over ten joints is 1/40 in each, and an inch in forty", () => {
    const { meanJoint, drift, offNow, offAtEnd } = jointDrift({ ...ten, taped: "80-1/4 in", jointsToGo: 30 });
    expect([meanJoint, drift, offNow, offAtEnd].map(String)).toEqual(["0.4 in", "0.025 in", "0.25 in", "1 in"]);
  });

  it("goes below nought where joints are narrow", () => {
    // 200 mm courses: ten units of 190 mm taped at 1980 mm leave 8 mm, 2 mm under 10 mm.
    const { meanJoint, drift, offNow } = jointDrift({ taped: "1980 mm", unitsTotal: "1900 mm", joints: 10, jointWanted: "10 mm", jointsToGo: 0 });
    expect([meanJoint, drift, offNow].map(String)).toEqual(["8 mm", "-2 mm", "-20 mm"]);
  });

  it("takes units that touch: no joint at all", () => {
    expect(jointDrift({ ...ten, taped: "76-1/4 in" }).meanJoint.toString()).toBe("0 in");
  });

  it("refuses a tape shorter than the units, and parts of a joint", () => {
    expect(faults(jointDrift.try({ ...ten, taped: "76 in" }))).toEqual(["tooLow meanJoint"]);
    expect(faults(jointDrift.try({ ...ten, taped: "80 in", joints: 9.5 }))).toEqual(["notWhole joints"]);
    expect(faults(jointDrift.try({ ...ten, taped: "80 in", joints: 0 }))).toEqual(["tooLow joints"]);
  });
});
