// Cut pieces at ends and along heads, by hand.
import { describe, expect, it } from "vitest";
import { cutUnits } from "../../src/layout/cut-units.js";
import { faults } from "../support/faults.js";

const window = { endHeight: "8 ft", courseHeight: "8 in", endShare: "50 %", rippedLength: "8 ft", unitLength: "15-5/8 in", headJoint: "3/8 in" } as const;

describe("cutUnits", () => {
  it("round a window of 4 ft x 4 ft", () => {
    // Two jambs of six courses, every other one cut: 6. Head and sill of 4 ft, three units of 16 in each: 6.
    const { endCuts, ripCuts, cuts } = cutUnits(window);
    expect([endCuts, ripCuts, cuts].map(String)).toEqual(["6", "6", "12"]);
  });

  it("counts a part of a course end or of a unit as one", () => {
    // 100 in of jamb are 12-1/2 course ends, all cut: 13. 4 ft 1 in are 49/16 units: 4.
    const { endCuts, ripCuts } = cutUnits({ ...window, endHeight: "100 in", endShare: "100 %", rippedLength: "49 in" });
    expect([endCuts, ripCuts].map(String)).toEqual(["13", "4"]);
  });

  it("is none where nothing is cut, and a share is no more than the whole", () => {
    expect(cutUnits({ ...window, endShare: "0 %", rippedLength: "0 ft" }).cuts.toString()).toBe("0");
    expect(faults(cutUnits.try({ ...window, endShare: "101 %" }))).toEqual(["tooHigh endShare"]);
  });
});
