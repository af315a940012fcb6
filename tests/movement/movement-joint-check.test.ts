import { describe, expect, it } from "vitest";
import { movementJointCheck } from "../../src/movement/movement-joint-check.js";
import { movementLayout } from "../../src/movement/movement-layout.js";
import { faults } from "../support/faults.js";

const drawn = { length: "30 ft", joints: ["20 ft", "10 ft"], backingJoints: ["10 ft"], reach: "0 in", most: "10 ft" } as const;

const notCarried = (change: object): readonly string[] => {
  const tried = movementJointCheck.try({ ...drawn, ...change });
  return tried.ok ? tried.solution.answers.notCarried.map(String) : faults(tried);
};
const tooWide = (change: object): readonly string[] => {
  const tried = movementJointCheck.try({ ...drawn, ...change });
  return tried.ok ? tried.solution.answers.tooWide.map(({ from, to }) => `${from.to("ft").toString()} to ${to.to("ft").toString()}`) : faults(tried);
};

describe("movementJointCheck", () => {
  it("finds nothing wrong where each joint of the backing has one and none are too far apart", () => {
    expect([notCarried({}), tooWide({})]).toEqual([[], []]);
  });

  it("names a joint of the backing that is left out, at the reach, just within and just beyond", () => {
    expect(notCarried({ backingJoints: ["10 ft", "15 ft"] })).toEqual(["15 ft"]);
    const beside = (at: string): readonly string[] => notCarried({ backingJoints: [at], reach: "1/4 in" });
    expect([beside("120.2499 in"), beside("120.25 in"), beside("120.2501 in"), beside("119.75 in"), beside("119.7499 in")]).toEqual([[], [], ["120.2501 in"], [], ["119.7499 in"]]);
    expect(notCarried({ joints: [] })).toEqual(["10 ft"]);
  });

  it("names a stretch that is too long, at the spacing, just within and just beyond; both ends count", () => {
    expect(tooWide({ most: "10.001 ft" })).toEqual([]);
    expect(tooWide({ most: "9.999 ft" })).toEqual(["0 to 10", "10 to 20", "20 to 30"]);
    expect(tooWide({ joints: ["10 ft"] })).toEqual(["10 to 30"]);
    expect(tooWide({ joints: [], most: "30 ft" })).toEqual([]);
    expect(tooWide({ joints: [], most: "29.999 ft" })).toEqual(["0 to 30"]);
  });

  it("finds nothing wrong with what movementLayout places, joint for joint", () => {
    const backing = ["17 ft", "18 ft", "41 ft"] as const;
    const { upright } = movementLayout({
      wall: { kind: "rectangle", width: "50 ft", height: "10 ft" },
      leftEnd: { at: "inside corner" },
      rightEnd: { at: "outside corner", firstJointWithin: "5 ft" },
      openings: [{ shape: { kind: "rectangle", width: "6 ft", height: "5 ft" }, left: "22 ft", bottom: "3 ft" }],
      floorLines: [],
      backingJoints: { upright: backing, level: [] },
      mostAcross: "12 ft",
      mostUp: "12 ft",
    });
    const joints = upright.map(({ at }) => at);
    expect(movementJointCheck({ length: "50 ft", joints, backingJoints: backing, reach: "0 in", most: "12 ft" })).toEqual({ notCarried: [], tooWide: [] });
    // 17 ft are two parts of 8.5, 23 ft two of 11.5; at 45 ft the corner wants its joint.
    expect(joints.map((at) => at.to("ft").toNumber())).toEqual([0, 8.5, 17, 18, 29.5, 41, 45]);
  });

  it("refuses joints beyond the wall, all at once", () => {
    expect(notCarried({ joints: ["30 ft", "30.001 ft"], backingJoints: ["31 ft"] })).toEqual(["tooHigh joints.1", "tooHigh backingJoints.0"]);
    expect(notCarried({ reach: undefined, most: "0 ft" })).toEqual(["missing reach", "tooLow most"]);
  });
});
