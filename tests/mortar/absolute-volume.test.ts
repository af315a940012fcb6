import { describe, expect, it } from "vitest";
import { absoluteVolume } from "../../src/mortar/absolute-volume.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

const mix = {
  parts: [
    { name: "cement", mass: "610 lb", relativeDensity: 3.15 },
    { name: "stone", mass: "1735 lb", relativeDensity: 2.6 },
    { name: "sand", mass: "1152 lb", relativeDensity: 2.65 },
  ],
  water: "305 lb",
  air: "5 %",
} as const;

describe("absoluteVolume", () => {
  it("works out the US Navy's example of ACI 211.1 in full (NAVEDTRA 14071, page 17-7)", () => {
    // By hand with water at 62.4 lb/ft3: cement 610 / 196.56 = 3.10, stone 1735 / 162.24 = 10.69, water 305 / 62.4 = 4.89,
    // air 5 % of 27 = 1.35, together 20.03; the sand fills the rest, 6.97 ft3, and 6.97 x 2.65 x 62.4 = 1152 lb.
    // All together 25.65 ft3 of solids and water, over 0.95 = 27.0 ft3, one cubic yard, of 3802 lb: 140.8 lb/ft3.
    const { volumes, volume, density } = absoluteVolume(mix);
    expect(volumes.map(({ name }) => name)).toEqual(["cement", "stone", "sand", "water"]);
    const [cement, stone, sand, water] = volumes.map((one) => one.volume.to("ft3"));
    expectPrinted(cement ?? 0, vector("navy-ea-absolute-volume-cement").expected.volume);
    expectPrinted(water ?? 0, vector("navy-ea-absolute-volume-water").expected.volume);
    expectPrinted(stone ?? 0, "10.69");
    expectPrinted(sand ?? 0, "6.96"); // 6.97 with water at 62.4 lb/ft3
    expectPrinted(volume.to("yd3"), "1.00");
    expectPrinted(density.to("lb/ft3"), "140.9"); // 3802 / 26.988; 140.8 with water at 62.4 lb/ft3
  });

  it("gives a cubic foot of paste from 100 to 105 lb of cement and 29 to 31 lb of water", () => {
    // Baker's rule. By hand: 100 / (3.15 x 62.43) + 29 / 62.43 = 0.5085 + 0.4645 = 0.973; 105 and 31 lb: 0.5339 + 0.4966 = 1.0305.
    const paste = (cement: string, water: string): number =>
      absoluteVolume({ parts: [{ name: "cement", mass: cement, relativeDensity: 3.15 }], water, air: 0 }).volume.toNumber("ft3");
    expect(paste("100 lb", "29 lb")).toBeCloseTo(0.973, 3);
    expect(paste("105 lb", "31 lb")).toBeCloseTo(1.0305, 3);
  });

  it("is exact in metric", () => {
    // 10 + 50 + 21 = 81 L; / 0.9 = 90 L; 31.5 + 132.5 + 21 = 185 kg; 185 / 90 kg/L.
    const { volume, density } = absoluteVolume({
      parts: [{ name: "cement", mass: "31.5 kg", relativeDensity: 3.15 }, { name: "sand", mass: "132.5 kg", relativeDensity: 2.65 }],
      water: "21 kg",
      air: "10 %",
    });
    expect(volume.to("L").toString()).toBe("90");
    expect(density.to("kg/L").toFixed(6)).toBe("2.055556");
  });

  it("names the part that is wrong", () => {
    expect(faults(absoluteVolume.try({ ...mix, parts: [{ name: "cement", mass: "610 lb", relativeDensity: 3.15 }, { name: "sand", mass: "1152", relativeDensity: 0 }] }))).toEqual([
      "noUnit parts.1.mass", "tooLow parts.1.relativeDensity",
    ]);
    expect(faults(absoluteVolume.try({ ...mix, water: undefined }))).toEqual(["missing water"]);
  });
});
