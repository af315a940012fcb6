import { describe, expect, it } from "vitest";
import { bagYield } from "../../src/mortar/bag-yield.js";
import { faults } from "../support/faults.js";

describe("bagYield", () => {
  it("is the mass of bag and water over the density of the mortar", () => {
    // 25 kg and 5 kg of water at 1.6 kg/L: 30 / 1.6 = 18.75 L.
    const mortar = bagYield({ dryMass: "25 kg", water: "5 L", wetDensity: "1.6 kg/L" });
    expect(mortar.wetMass.toString()).toBe("30 kg");
    expect(mortar.bagYield.toString()).toBe("18.75 L");
  });

  it("is the same in pounds and quarts", () => {
    // 50 lb and 6 qt: 1.5 gal x 231 / 1728 ft3 = 0.200521 ft3 of water at 62.42796 lb/ft3 = 12.5181 lb; 62.5181 / 105 = 0.595411 ft3.
    const mortar = bagYield({ dryMass: "50 lb", water: "6 qt", wetDensity: "105 lb/ft3" });
    expect(mortar.wetMass.to("lb").toFixed(4)).toBe("62.5181");
    expect(mortar.bagYield.to("ft3").toFixed(6)).toBe("0.595411");
  });

  it("grows with the water and falls with the density", () => {
    const base = bagYield({ dryMass: "50 lb", water: "5 qt", wetDensity: "105 lb/ft3" }).bagYield.to("ft3");
    expect(bagYield({ dryMass: "50 lb", water: "5.1 qt", wetDensity: "105 lb/ft3" }).bagYield.to("ft3").gt(base)).toBe(true);
    expect(bagYield({ dryMass: "50 lb", water: "5 qt", wetDensity: "106 lb/ft3" }).bagYield.to("ft3").lt(base)).toBe(true);
  });

  it("refuses a mass per area as a density, and nought", () => {
    expect(faults(bagYield.try({ dryMass: "50 lb", water: "0 qt", wetDensity: "105 lb/ft2" }))).toEqual(["tooLow water", "wrongDimension wetDensity"]);
  });
});
