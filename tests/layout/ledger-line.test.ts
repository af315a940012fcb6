import { describe, expect, it } from "vitest";
import { ledgerHeight } from "../../src/layout/ledger-height.js";
import { ledgerLine } from "../../src/layout/ledger-line.js";
import { ledgerScrews } from "../../src/layout/ledger-screws.js";
import { stoneBelow } from "../../src/layout/stone-below.js";
import { liftByLedger } from "../../src/timing/lift-by-ledger.js";
import { faults } from "../support/faults.js";

const courses = { courseLine: "40 in", unitHeight: "7-5/8 in", bedJoint: "3/8 in", clearance: "4 in" } as const;
const screwed = { wetLoad: "20 psf", uncuredHeight: "4 ft", ledgerLength: "24 ft", studSpacing: "16 in", allowableLoadPerScrew: "60 lbf" } as const;
const { uncuredHeight, ledgerLength, studSpacing, allowableLoadPerScrew } = screwed;
const line = { ...courses, uncuredHeight, ledgerLength, studSpacing, allowableLoadPerScrew, wetWeight: "20 lb/ft2", groundFall: "6 in" } as const;

describe("ledgerScrews", () => {
  it("by statics: 4 ft of 20 psf are 80 lb/ft, no bond to the wall counted on", () => {
    // A stud at 16 in takes 80 x 4/3 = 106-2/3 lb: two screws of 60 lb. 60 / 80 ft = 9 in. 24 ft / 16 in = 18 bays, 19 studs.
    const screws = ledgerScrews(screwed);
    expect([screws.lineLoad, screws.spacingByLoad, screws.loadPerStud, screws.loadPerScrew].map(String)).toEqual(["80 lbf/ft", "9 in", "106.6666667 lbf", "53.33333333 lbf"]);
    expect([screws.screwsPerStud, screws.studs, screws.screws].map(String)).toEqual(["2", "19", "38"]);
  });

  it("in metric units", () => {
    // 980.665 Pa (100 kg/m2) x 1.2 m = 1176.798 N/m; x 0.6 m = 706.0788 N: three screws of 300 N. 7.2 m / 0.6 m = 12 bays.
    const screws = ledgerScrews({ wetLoad: "980.665 Pa", uncuredHeight: "1.2 m", ledgerLength: "7.2 m", studSpacing: "600 mm", allowableLoadPerScrew: "300 N" });
    expect([screws.lineLoad.to("N/m").toString(), screws.loadPerStud.to("N").toString(), screws.screwsPerStud.toString(), screws.studs.toString()]).toEqual(["1176.798", "706.0788", "3", "13"]);
  });

  it("gives what the height of a lift is worked out from", () => {
    // 2 x 60 / (4/3 ft) = 90 lb/ft, which carries 4.5 ft of 20 psf: not less than was asked for.
    const { ledgerCapacity } = ledgerScrews(screwed);
    expect(ledgerCapacity.toString()).toBe("90 lbf/ft");
    expect(liftByLedger({ wetWeight: line.wetWeight, ledgerCapacity }).height.toString()).toBe("4.5 ft");
  });

  it("takes one screw more just over the edge, and none less for more load", () => {
    const count = (allowableLoadPerScrew: `${number} lbf` | `${number}/${number} lbf`): string => ledgerScrews({ ...screwed, allowableLoadPerScrew }).screwsPerStud.toString();
    // 320/3 lb at a stud.
    expect([count("320/3 lbf"), count("106.66 lbf"), count("160/3 lbf"), count("53.33 lbf")]).toEqual(["1", "2", "2", "3"]);
  });

  it("says who decides, and never computes what a screw carries", () => {
    expect(ledgerScrews.solve(screwed).cautions.some((text) => text.includes("licensed design professional"))).toBe(true);
    expect(faults(ledgerScrews.try({ ...screwed, allowableLoadPerScrew: undefined }))).toEqual(["missing allowableLoadPerScrew"]);
  });
});

describe("ledgerHeight and stoneBelow", () => {
  it("whole courses down from a line, clear of the ground", () => {
    // 40 - 4 = 36 in hold four courses of 8 in; the fifth would end at 0.
    const ledger = ledgerHeight({ ...courses, leastBelow: "0 in" });
    expect([ledger.courses, ledger.height, ledger.below].map(String)).toEqual(["4", "8 in", "4 in"]);
    expect(ledgerHeight({ ...courses, clearance: "8 in", leastBelow: "0 in" }).courses.toString()).toBe("4");
    expect(ledgerHeight({ ...courses, clearance: "8-1/16 in", leastBelow: "0 in" }).courses.toString()).toBe("3");
    expect(faults(ledgerHeight.try({ ...courses, clearance: "41 in", leastBelow: "0 in" }))).toEqual(["tooLow courses"]);
  });

  it("what is under it at the lowest ground", () => {
    // 4 + 14 = 18 = 2 x 8 + 2; 4 + 4 = 8 is one course, and nothing left.
    const fields = { below: "4 in", unitHeight: "7-5/8 in", bedJoint: "3/8 in" } as const;
    expect([stoneBelow({ ...fields, groundFall: "14 in" }).courses, stoneBelow({ ...fields, groundFall: "14 in" }).rest].map(String)).toEqual(["2", "2 in"]);
    expect([stoneBelow({ ...fields, groundFall: "4 in" }).courses, stoneBelow({ ...fields, groundFall: "4 in" }).rest].map(String)).toEqual(["1", "0 in"]);
  });
});

describe("ledgerLine", () => {
  it("with a level foot: the ledger is the foot of the stone", () => {
    const ledger = ledgerLine({ ...line, foot: "level" });
    expect([ledger.height, ledger.courses, ledger.clearAtLowest, ledger.screwsPerStud, ledger.holes].map(String)).toEqual(["8 in", "4", "14 in", "2", "38"]);
    expect([ledger.atHighest, ledger.atLowest, ledger.mayGoAfter]).toEqual([undefined, undefined, undefined]);
  });

  it("with a foot along the ground: half a unit at least at the highest ground, more at the lowest", () => {
    // Half of 7-5/8 less a joint is 3-5/8; with its joint 4 in. 40 - 4 - 4 = 32: four courses, ledger at 8 in, 4 in below
    // it, 3-5/8 of them stone. At the lowest ground 4 + 6 = 10 in: a whole course and 2 in.
    const ledger = ledgerLine({ ...line, foot: "along the ground" });
    expect([ledger.height, ledger.courses, ledger.clearAtLowest].map(String)).toEqual(["8 in", "4", "4 in"]);
    expect([ledger.atHighest, ledger.atLowest].map((under) => `${String(under?.courses)} and ${String(under?.rest)}`)).toEqual(["0 and 4 in", "1 and 2 in"]);
    expect(ledger.twoAlike).toBeUndefined();
    // With a smaller cut allowed there is room for 4 - 1/16 in, 3-9/16 of them stone.
    const smaller = ledgerLine({ ...line, clearance: "4-1/16 in", leastCut: "3-1/2 in", foot: "along the ground" });
    expect([smaller.height, smaller.courses, smaller.atHighest?.courses, smaller.atHighest?.rest].map(String)).toEqual(["8 in", "4", "0", "3.9375 in"]);
  });

  it("cuts two alike where a whole course would leave a sliver", () => {
    // 1/16 in less room: a course less, 11-15/16 in under the ledger. A whole course leaves 3-15/16, of stone 3-9/16, under
    // 3-5/8; two alike are (11-15/16 - 3/4) / 2 = 5-19/32.
    const higher = ledgerLine.solve({ ...line, clearance: "4-1/16 in", foot: "along the ground" });
    const { height, courses: whole, atHighest, twoAlike } = higher.answers;
    expect([height, whole, atHighest?.courses, atHighest?.rest, twoAlike].map(String)).toEqual(["16 in", "3", "1", "3.9375 in", "5.59375 in"]);
    expect(higher.cautions.some((text) => text.includes("cut two alike, 5.59375 in each"))).toBe(true);
    // A whole course exactly leaves nothing to cut.
    const exactly = ledgerLine({ ...line, clearance: "8 in", leastCut: "7 in", foot: "along the ground" });
    expect([exactly.height, exactly.atHighest?.courses, exactly.atHighest?.rest, exactly.twoAlike].map(String)).toEqual(["16 in", "1", "0 in", "undefined"]);
  });

  it("when it may go: 48 h at 70 degF are 96 h at 52 degF by doubling each 18 degF", () => {
    const wait = { timeAtReference: "48 h", reference: "70 degF", temperature: "52 degF", rule: "doubling" } as const;
    expect(ledgerLine({ ...line, foot: "level", ...wait }).mayGoAfter?.to("h").toFixed(6)).toBe("96.000000");
    expect(ledgerLine.solve({ ...line, foot: "level" }).cautions.some((text) => text.includes("is not told"))).toBe(true);
    expect(faults(ledgerLine.try({ ...line, foot: "level", timeAtReference: "48 h", rule: "doubling" }))).toEqual(["missing reference", "missing temperature"]);
    expect(faults(ledgerLine.try({ ...line, foot: "level", ...wait, temperature: "39 degF" }))).toEqual(["tooLow temperature"]);
  });

  it("refuses a least cut that nothing asks for, and ground above the line", () => {
    expect(faults(ledgerLine.try({ ...line, foot: "level", leastCut: "3 in" }))).toEqual(["refused leastCut"]);
    expect(faults(ledgerLine.try({ ...line, foot: "level", clearance: "41 in" }))).toEqual(["tooLow courses"]);
  });

  it("doubts a height that has not set under one course, and no other", () => {
    const doubts = (uncured: "4 ft"): boolean => ledgerLine.solve({ ...line, uncuredHeight: uncured, foot: "level" }).cautions.some((text) => text.startsWith("The height that has not set is less than one course"));
    expect(["7.6 in", "7-5/8 in", "4 ft"].map((height) => doubts(height as "4 ft"))).toEqual([true, false, false]);
  });

  it("says what it leaves to others", () => {
    const { cautions } = ledgerLine.solve({ ...line, foot: "along the ground" });
    for (const word of ["licensed design professional", "Mend every hole", "Test before the clock", "wedge"]) expect(cautions.some((text) => text.includes(word))).toBe(true);
  });
});
