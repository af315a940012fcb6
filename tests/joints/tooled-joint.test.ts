import { describe, expect, it } from "vitest";
import { tooledJoint } from "../../src/joints/tooled-joint.js";
import { faults } from "../support/faults.js";

describe("tooledJoint", () => {
  it("is what the tool leaves", () => {
    expect(tooledJoint({ volume: "8 ft3", toolingShare: "25 %" }).tooled.toString()).toBe("6 ft3");
    expect(tooledJoint({ volume: "8 ft3", toolingShare: 0 }).tooled.toString()).toBe("8 ft3");
  });

  it("refuses to tool all of it out", () => {
    expect(faults(tooledJoint.try({ volume: "8 ft3", toolingShare: 1 }))).toEqual(["tooHigh toolingShare"]);
  });
});
