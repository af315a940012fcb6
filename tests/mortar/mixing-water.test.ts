import { describe, expect, it } from "vitest";
import { mixingWater } from "../../src/mortar/mixing-water.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

const bag = { bagMass: "50 lb", waterLow: "5 qt", waterHigh: "6 qt" } as const;

describe("mixingWater", () => {
  it("shares the water of a bag by mass", () => {
    // 17.5 lb of a 50-lb bag is 0.35 of it: 0.35 x 5 = 1.75 qt, 0.35 x 6 = 2.1 qt.
    const water = mixingWater({ dryMass: "17.5 lb", ...bag });
    expect(water.firstPour.toString()).toBe("1.75 qt");
    expect(water.most.toString()).toBe("2.1 qt");
    expect(water.holdBack.toString()).toBe("0.35 qt");
  });

  it("keeps the ratio of the bag, however much of it is in the pail", () => {
    // 5 and 6 qt are 4.73176473 and 5.678117676 kg of water, over 22.6796185 kg: 0.208635 and 0.250362.
    const { ratioLow, ratioHigh } = mixingWater({ dryMass: "17.5 lb", ...bag });
    expect([ratioLow, ratioHigh].map((ratio) => ratio.toNumber("ratio").toFixed(6))).toEqual(["0.208635", "0.250362"]);
  });

  it("takes a third of a bag exactly", () => {
    // 50/3 lb has no end as a decimal: a third of 6 qt is 2 qt to the last digit.
    expect(mixingWater({ dryMass: "50/3 lb", ...bag }).most.toJSON()).toEqual({ value: "2", unit: "qt" });
  });

  it("serves several bags, those mixed and those ordered alike", () => {
    // 44 bags: 44 x 5 = 220 qt.
    expect(mixingWater({ dryMass: "2200 lb", ...bag }).firstPour.toString()).toBe("220 qt");
    // The US Army's take-off (EN5466) allows 8 gal to the sack for all the water of a job.
    const army = vector("army-takeoff-water");
    expect(army.inputs).toEqual({ sacks: "495", rate: "8 gal/sack" });
    expectPrinted(mixingWater({ dryMass: "46530 lb", bagMass: "94 lb", waterLow: "8 gal", waterHigh: "8 gal" }).most.to("gal"), army.expected.water);
    // Rounding cases: 3 bags at 1.1 gal fill one container of 3.3 gal to the drop, 6 bags two.
    expect(vector("mix-water-1").expected).toEqual({ containers: "1 containers" });
    expect(mixingWater({ dryMass: "150 lb", bagMass: "50 lb", waterLow: "1.1 gal", waterHigh: "1.1 gal" }).most.to("gal").toString()).toBe("3.3");
    expect(vector("mix-water-2").expected).toEqual({ containers: "2 containers" });
    expect(mixingWater({ dryMass: "300 lb", bagMass: "50 lb", waterLow: "1.1 gal", waterHigh: "1.1 gal" }).most.to("gal").toString()).toBe("6.6");
  });

  it("gives the ratio by mass that the table of water by ratio was worked out with", () => {
    const row = vector("water-qt-50lb-0p22-0p26");
    expect(row.expected).toEqual({ quarts: "5.272 to 6.231", litres: "4.990 to 5.897" });
    const { ratioLow, ratioHigh } = mixingWater({ dryMass: "50 lb", bagMass: "50 lb", waterLow: "5.272 qt", waterHigh: "6.231 qt" });
    expectPrinted(ratioLow.to(), "0.22");
    expectPrinted(ratioHigh.to(), "0.26");
  });

  it("is the same in metric: 50 lb is 22.6796185 kg, a quart 0.946352946 L", () => {
    const water = mixingWater({ dryMass: "7.937866475 kg", bagMass: "22.6796185 kg", waterLow: "4.73176473 L", waterHigh: "5.678117676 L" });
    // 0.35 x 5 qt x 0.946352946 L = 1.6561176555 L
    expect(water.firstPour.to("L").toString()).toBe("1.6561176555");
  });

  it("takes one figure for both, and refuses a high figure below the low one", () => {
    expect(mixingWater({ dryMass: "50 lb", ...bag, waterHigh: "5 qt" }).holdBack.toString()).toBe("0 qt");
    expect(faults(mixingWater.try({ dryMass: "50 lb", ...bag, waterHigh: "4.99 qt" }))).toEqual(["tooLow holdBack"]);
  });

  it("refuses nought, and water by mass where a volume is wanted", () => {
    expect(faults(mixingWater.try({ dryMass: "0 lb", bagMass: "0 lb", waterLow: "0 qt", waterHigh: "0 qt" }))).toEqual([
      "tooLow dryMass", "tooLow bagMass", "tooLow waterLow", "tooLow waterHigh",
    ]);
    expect(faults(mixingWater.try({ dryMass: "50 lb", ...bag, waterLow: "10 lb" }))).toEqual(["wrongDimension waterLow"]);
  });
});
