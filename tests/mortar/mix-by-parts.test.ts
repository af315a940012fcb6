import { describe, expect, it } from "vitest";
import { mixByParts } from "../../src/mortar/mix-by-parts.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

const us = { cementDensity: "94 lb/ft3", limeDensity: "40 lb/ft3", sandDensity: "80 lb/ft3", cementBag: "94 lb", limeBag: "50 lb" } as const;
const indian = { cementDensity: "1440 kg/m3", limeDensity: "640 kg/m3", sandDensity: "1280 kg/m3", cementBag: "50 kg", limeBag: "25 kg" } as const;

describe("mixByParts", () => {
  it("gives rule 38 of the US Navy manuals for a yard of 1 : 3", () => {
    // Rule 38: cement 38 / 4 = 9.5 sacks of 1 ft3, sand three times as much; a bulking factor of 38/27.
    const rule = vector("navy-rule-38-1-3");
    const mix = mixByParts({ volume: "1 yd3", cementPart: 1, limePart: 0, sandPart: 3, bulkingFactor: "38/27", ...us });
    expect(rule.expected.cement).toBe(`${mix.cement.to("ft3").toString()} sacks (9.5 ft3)`);
    expectPrinted(mix.sand.to("ft3"), rule.expected.sand);
    expect(mix.cementMass.toString()).toBe("893 lb");
    expect(mix.cementBags.toString()).toBe("10");
    expect(mix.limeBags.toString()).toBe("0");
  });

  it("gives the worked rate analysis of Indian course notes, 1 : 6 with a factor of 1.33", () => {
    const { inputs, expected } = vector("in-mix-1-6-materials");
    expect(inputs).toMatchObject({ wet_volume: "0.2305 m3", mix: "1:6", dry_factor: "1.33" });
    const mix = mixByParts({ volume: "0.2305 m3", cementPart: 1, limePart: 0, sandPart: 6, bulkingFactor: 1.33, ...indian });
    expectPrinted(mix.dry.to("m3"), expected.dry_volume);
    expectPrinted(mix.cement.to("m3"), expected.cement);
    // The source multiplies the rounded 0.0438 m3 by 1440: 63.07 kg; unrounded it is 0.2305 x 1.33 / 7 x 1440 = 63.0648 kg.
    expectPrinted(mix.cementMass.to("kg"), "63.06");
    expect(Number.parseFloat(expected.cement_mass ?? "") - mix.cementMass.toNumber("kg")).toBeCloseTo(0.0052, 4);
    expectPrinted(mix.cementMass.to("kg").div(50), expected.bags);
    expectPrinted(mix.sand.to("m3"), expected.sand);
  });

  it("gives the second one, with its waste put on before and its bags rounded up", () => {
    const { inputs, expected } = vector("in-10m3-1-6-frog-25pc");
    expect(inputs).toMatchObject({ dry_factor: "1.30", mix: "1:6", bag_volume: "0.035 m3" });
    // A bag of 0.035 m3 at 1440 kg/m3 weighs 50.4 kg. The source cuts 0.5386 off to 0.538.
    const mix = mixByParts({ volume: "2.9 m3", cementPart: 1, limePart: 0, sandPart: 6, bulkingFactor: 1.3, ...indian, cementBag: "50.4 kg" });
    expectPrinted(mix.dry.to("m3"), expected.dry);
    expect(mix.cement.to("m3").toFixed(3, 1)).toBe(expected.cement?.replace(" m3", ""));
    expectPrinted(mix.sand.to("m3"), expected.sand);
    expect(expected.bags).toMatch(new RegExp(`-> ${mix.cementBags.toString()}$`));
  });

  it("needs one factor of 1.2 for the sand of the pocketbook's rich mortars, 1 : 1 to 1 : 3", () => {
    // International Correspondence Schools, Building Trades Pocketbook, about 1905: sand per yd3 of mortar.
    const { inputs, expected } = vector("ics-mortar-table");
    const mixes = (inputs.mix ?? "").split(", ");
    const sands = (expected.sand ?? "").replace(" yd3", "").split(", ");
    for (const part of [1, 2, 3]) {
      const printed = sands[mixes.indexOf(`1:${String(part)}`)];
      expectPrinted(mixByParts({ volume: "1 yd3", cementPart: 1, limePart: 0, sandPart: part, bulkingFactor: 1.2, ...us }).sand.to("yd3"), printed);
    }
  });

  it("works out an ASTM C270 batch, Type N, by hand", () => {
    // 1 : 1-1/4 : 6-3/4 is 9 parts; 9 ft3 of mortar at a factor of 1.25 take 11.25 ft3, 1.25 ft3 a part.
    const mix = mixByParts({ volume: "9 ft3", cementPart: 1, limePart: "1-1/4", sandPart: "6-3/4", bulkingFactor: 1.25, ...us });
    expect(mix.sandRatio.toString()).toBe("3");
    expect([mix.cement, mix.lime, mix.sand].map(String)).toEqual(["1.25 ft3", "1.5625 ft3", "8.4375 ft3"]);
    // 1.25 x 94 = 117.5 lb, 1.5625 x 40 = 62.5 lb, 8.4375 x 80 = 675 lb
    expect([mix.cementMass, mix.limeMass, mix.sandMass].map(String)).toEqual(["117.5 lb", "62.5 lb", "675 lb"]);
    expect([mix.cementBags, mix.limeBags].map(String)).toEqual(["2", "2"]);
  });

  it("counts by the part, also where cement is two of them", () => {
    // 2 + 1 + 9 parts of 12 ft3 x 1.25 = 15 ft3: 1.25 ft3 a part.
    const mix = mixByParts({ volume: "12 ft3", cementPart: 2, limePart: 1, sandPart: 9, bulkingFactor: 1.25, ...us });
    expect([mix.cement, mix.lime, mix.sand].map(String)).toEqual(["2.5 ft3", "1.25 ft3", "11.25 ft3"]);
  });

  it("rounds up nothing that comes out even (rounding case)", () => {
    // 9 batches of 7 ft3, a third of each from bags of 0.7 ft3: 30 bags to the bag.
    const { expected } = vector("cement-blend-parts-1");
    const mix = mixByParts({ volume: "63 ft3", cementPart: 1, limePart: 0, sandPart: 2, bulkingFactor: 1, ...us, cementDensity: "10 lb/ft3", cementBag: "7 lb" });
    expectPrinted(mix.cementBags.to(), expected.bags);
  });

  it("takes lime mortar without cement, and no mortar without a binder or sand", () => {
    expect(mixByParts({ volume: "9 ft3", cementPart: 0, limePart: 1, sandPart: 3, bulkingFactor: 1.25, ...us }).cement.toString()).toBe("0 ft3");
    expect(faults(mixByParts.try({ volume: "9 ft3", cementPart: 0, limePart: 0, sandPart: 3, bulkingFactor: 1.25, ...us }))).toEqual(["tooLow binder"]);
    expect(faults(mixByParts.try({ volume: "9 ft3", cementPart: 0, limePart: 0, sandPart: 0, bulkingFactor: 1.25, ...us }))).toEqual(["tooLow sandPart"]);
  });

  it("asks for the bulking factor and refuses one below 1", () => {
    const parts = { volume: "9 ft3", cementPart: 1, limePart: 0, sandPart: 3, ...us };
    expect(faults(mixByParts.try(parts))).toEqual(["missing bulkingFactor"]);
    expect(faults(mixByParts.try({ ...parts, bulkingFactor: 0.75 }))).toEqual(["tooLow bulkingFactor"]);
    expect(faults(mixByParts.try({ ...parts, bulkingFactor: 1.33 }))).toEqual([]);
  });
});
