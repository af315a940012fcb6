import { describe, expect, it } from "vitest";
import { siteMix } from "../../src/mortar/site-mix.js";
import { faults } from "../support/faults.js";
import { vector } from "../support/vectors.js";

const bags = { cementDensity: "94 lb/ft3", limeDensity: "40 lb/ft3", sandDensity: "80 lb/ft3", cementBag: "94 lb", limeBag: "50 lb" } as const;
const typeN = { type: "N", specification: "proportion", sandRatio: 3, volume: "9 ft3", bulkingFactor: 1.25, ...bags } as const;

describe("siteMix", () => {
  it("takes the parts of the US Army table (EN5157) for M, N and O", () => {
    // Type M: 1 : 1/4 : 3-3/4 is 5 parts, 11.25 / 5 = 2.25 ft3 each.
    const m = siteMix({ ...typeN, type: "M" });
    expect([m.cement, m.lime, m.sand].map(String)).toEqual(["2.25 ft3", "0.5625 ft3", "8.4375 ft3"]);
    // Type N: 9 parts of 1.25 ft3, as worked out by hand in mix-by-parts.test.ts.
    const n = siteMix(typeN);
    expect([n.cement, n.lime, n.sand].map(String)).toEqual(["1.25 ft3", "1.5625 ft3", "8.4375 ft3"]);
    // Type O: 1 : 2 : 9 is 12 parts of 0.9375 ft3.
    const o = siteMix({ ...typeN, type: "O" });
    expect([o.cement, o.lime, o.sand].map(String)).toEqual(["0.9375 ft3", "1.875 ft3", "8.4375 ft3"]);
    expect([m, n, o].map(({ sandRatio }) => sandRatio.toString())).toEqual(["3", "3", "3"]);
  });

  it("says what it stands on, and that Type S is from memory", () => {
    expect(siteMix.solve(typeN).assumptions.join()).toContain("US Army Engineer School");
    const s = siteMix.solve({ ...typeN, type: "S" });
    expect(s.assumptions.join()).toContain("from memory");
    expect(siteMix.solve(typeN).assumptions.join()).not.toContain("from memory");
    // 1 : 1/2 : 4-1/2 is 6 parts of 1.875 ft3.
    expect(s.answers.cement.toString()).toBe("1.875 ft3");
  });

  it("takes 2-1/4 to 3-1/2 of sand by properties (ASTM C270 as quoted in Masonry Magazine, 1993), and 3 at most by proportions", () => {
    const { ratio_min, ratio_max } = vector("astm-c270-property-sand-ratio").expected;
    for (const sandRatio of [Number(ratio_min), Number(ratio_max)]) expect(siteMix.try({ ...typeN, specification: "property", sandRatio }).ok).toBe(true);
    expect(faults(siteMix.try({ ...typeN, specification: "property", sandRatio: 2.24 }))).toEqual(["tooLow sandRatio"]);
    expect(faults(siteMix.try({ ...typeN, specification: "property", sandRatio: 3.51 }))).toEqual(["tooHigh sandRatio"]);
    expect(siteMix.try({ ...typeN, specification: "proportion", sandRatio: 3 }).ok).toBe(true);
    expect(faults(siteMix.try({ ...typeN, specification: "proportion", sandRatio: 3.01 }))).toEqual(["tooHigh sandRatio"]);
  });

  it("tells that the sources disagree on the bulking factor, and has no default", () => {
    expect(siteMix.solve(typeN).cautions.join()).toContain("bulking factor is in dispute");
    expect(faults(siteMix.try({ ...typeN, bulkingFactor: undefined }))).toEqual(["missing bulkingFactor"]);
    expect(faults(siteMix.try({ ...typeN, type: "K" }))).toEqual(["notAChoice type"]);
  });
});
