import { describe, expect, it } from "vitest";
import { quantity } from "../../src/core/read-quantity.js";
import { waterFromRatio } from "../../src/mortar/water-from-ratio.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vectors } from "../support/vectors.js";

describe("waterFromRatio", () => {
  it("gives the quarts and litres of the table of water by ratio", () => {
    // Water at 1 kg/L, which is 8.3454 lb to the US gallon.
    const rows = vectors("water-qt-");
    expect(rows).toHaveLength(4);
    for (const { inputs, expected } of rows) {
      const [low = "", high = ""] = (inputs.ratio ?? "").split(" to ");
      const [qtLow = "", qtHigh = ""] = (expected.quarts ?? "").split(" to ");
      const [litresLow = "", litresHigh = ""] = (expected.litres ?? "").split(" to ");
      const dryMass = quantity("mass", (inputs.dry ?? "") as "50 lb");
      const water = waterFromRatio({ dryMass, ratioLow: Number(low), ratioHigh: Number(high) });
      expectPrinted(water.firstPour.to("qt"), qtLow);
      expectPrinted(water.most.to("qt"), qtHigh);
      expectPrinted(water.firstPour.to("L"), litresLow);
      expectPrinted(water.most.to("L"), litresHigh);
    }
  });

  it("gives the third of a bag that is asked for on site: 17.5 lb at 0.23", () => {
    // 17.5 x 0.23 = 4.025 lb; / 8.3454 lb/gal x 4 = 1.929 qt; x 0.45359237 = 1.826 L.
    const water = waterFromRatio({ dryMass: "17.5 lb", ratioLow: 0.23, ratioHigh: 0.23 });
    expectPrinted(water.firstPour.to("qt"), "1.93");
    expectPrinted(water.firstPour.to("L"), "1.83");
    expect(water.holdBack.toString()).toBe("0 qt");
  });

  it("refuses a high ratio below the low one, a percentage written as a number, and nought", () => {
    expect(faults(waterFromRatio.try({ dryMass: "50 lb", ratioLow: 0.26, ratioHigh: 0.22 }))).toEqual(["tooLow holdBack"]);
    expect(faults(waterFromRatio.try({ dryMass: "50 lb", ratioLow: 22, ratioHigh: 26 }))).toEqual(["tooHigh ratioLow", "tooHigh ratioHigh"]);
    expect(faults(waterFromRatio.try({ dryMass: "0 lb", ratioLow: 0, ratioHigh: 0.1 }))).toEqual(["tooLow dryMass", "tooLow ratioLow"]);
  });
});
