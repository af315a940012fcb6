// Studs against the drawing, by hand.
import { describe, expect, it } from "vitest";
import { studMark } from "../../src/boards/stud-mark.js";
import { faults } from "../support/faults.js";

const wall = { start: "16 in", spacing: "16 in", flange: "1-5/8 in" } as const;

describe("studMark", () => {
  it("has the whole half of the flange where the stud is in its place", () => {
    const { drawn, error, leastBearing } = studMark({ ...wall, number: 3, measured: "48 in" });
    expect([drawn, error, leastBearing].map(String)).toEqual(["48 in", "0 in", "0.8125 in"]);
  });

  it("is off either way, and adds up along the wall", () => {
    // A sixteenth too wide in each bay: after 12 bays the 13th stud, drawn at 208 in, stands 3/4 in beyond, and 1/16 in is left
    // of 13/16 in.
    const far = studMark({ ...wall, number: 13, measured: "208-3/4 in" });
    expect([far.error, far.leastBearing].map(String)).toEqual(["0.75 in", "0.0625 in"]);
    const near = studMark({ ...wall, number: 13, measured: "207 in" });
    expect([near.error, near.away, near.leastBearing].map(String)).toEqual(["-1 in", "1 in", "-0.1875 in"]);
  });

  it("counts studs from one, whole", () => {
    expect(faults(studMark.try({ ...wall, number: 0, measured: "0 in" }))).toEqual(["tooLow number"]);
    expect(faults(studMark.try({ ...wall, number: 1.5, measured: "24 in" }))).toEqual(["notWhole number"]);
  });
});
