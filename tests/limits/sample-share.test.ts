// Counts of a sample, by hand.
import { describe, expect, it } from "vitest";
import { sampleShare } from "../../src/limits/sample-share.js";
import { faults } from "../support/faults.js";

describe("sampleShare", () => {
  it("shares out the good and the bad", () => {
    // 52 screws looked at, 3 spun: 49 of 52.
    const { bad, share, badShare } = sampleShare({ looked: 52, good: 49 });
    expect(bad.toString()).toBe("3");
    expect(share.to("%").times(52).toFixed(6)).toBe("4900.000000");
    expect(badShare.to("%").times(52).toFixed(6)).toBe("300.000000");
  });

  it("goes from none to all", () => {
    expect(sampleShare({ looked: 12, good: 0 }).share.toString()).toBe("0 %");
    expect(sampleShare({ looked: 12, good: 12 }).badShare.toString()).toBe("0 %");
  });

  it("refuses more good ones than were looked at, none looked at, and parts", () => {
    expect(faults(sampleShare.try({ looked: 12, good: 13 }))).toEqual(["tooLow bad"]);
    expect(faults(sampleShare.try({ looked: 0, good: 0.5 }))).toEqual(["tooLow looked", "notWhole good"]);
  });
});
