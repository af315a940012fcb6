// A range of bags, by hand.
import { describe, expect, it } from "vitest";
import { bedMortarRange } from "../../src/mortar/bed-mortar-range.js";
import { faults } from "../support/faults.js";

const face = { area: "100 ft2", backButter: "1/8 in", butteredShare: "80 %", waste: "10 %", bagYield: "0.5 ft3" } as const;

describe("bedMortarRange", () => {
  it("gives bags by each bed, each rounded up once", () => {
    // Back-butter over the face: 0.8 x 1/8 = 1/10 in. Beds of 1/4, 3/8 and 5/8 in: 0.35, 0.475 and 0.725 in over 100 ft2 are
    // 35/12, 47.5/12 and 72.5/12 ft3; with 10 % 3.208, 4.354 and 6.646 ft3; in bags of 1/2 ft3 6.4, 8.7 and 13.3.
    const { low, typical, high } = bedMortarRange({ ...face, lowBed: "1/4 in", typicalBed: "3/8 in", highBed: "5/8 in" });
    expect([low, typical, high].map(({ bags }) => bags.toString())).toEqual(["7", "9", "14"]);
    expect(low.net.to("ft3").toFixed(6)).toBe((35 / 12).toFixed(6));
    expect(high.toOrder.to("ft3").toFixed(6)).toBe((1.1 * 72.5 / 12).toFixed(6));
  });

  it("takes three equal beds, and refuses beds that do not rise", () => {
    const { low, high } = bedMortarRange({ ...face, lowBed: "3/8 in", typicalBed: "3/8 in", highBed: "3/8 in" });
    expect(low.bags.toString()).toBe(high.bags.toString());
    expect(faults(bedMortarRange.try({ ...face, lowBed: "1/2 in", typicalBed: "3/8 in", highBed: "1/4 in" }))).toEqual(["refused typicalBed", "refused highBed"]);
  });
});
