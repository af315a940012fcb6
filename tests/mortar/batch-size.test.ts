import { describe, expect, it } from "vitest";
import { batchSize } from "../../src/mortar/batch-size.js";
import { faults } from "../support/faults.js";

const plan = {
  life: "2 h", slake: "20 min", carry: "10 min", margin: "30 min", placingRate: "24 ft2/h", thickness: "1/2 in",
  mixerHolds: "2 ft3", volume: "12 ft3", bagYield: "0.5 ft3", bagMass: "50 lb", waterLow: "5 qt", waterHigh: "6 qt",
} as const;

describe("batchSize", () => {
  it("gives the batch, its water, and how many", () => {
    // One cubic foot, two bags: 10 qt first, 2 qt held back; see batch-volume.test.ts for the batch.
    const { governedBy, dryMass, firstPour, holdBack, most, batches } = batchSize(plan);
    expect(governedBy).toBe("crew");
    expect([dryMass, firstPour, holdBack, most, batches].map(String)).toEqual(["100 lb", "10 qt", "2 qt", "12 qt", "12"]);
  });

  it("names the mixer where it holds less than the crew can place", () => {
    const { governedBy, dryMass, most, batches } = batchSize({ ...plan, mixerHolds: "3/4 ft3" });
    expect(governedBy).toBe("mixer");
    expect([dryMass, most, batches].map(String)).toEqual(["75 lb", "9 qt", "16"]);
  });

  it("is one batch where all of it can be placed at once", () => {
    expect(batchSize({ ...plan, volume: "1 ft3" }).batches.toString()).toBe("1");
  });

  it("passes on what its calculations refuse", () => {
    expect(faults(batchSize.try({ ...plan, slake: "90 min" }))).toEqual(["tooLow placingTime"]);
    expect(faults(batchSize.try({ ...plan, waterHigh: "4 qt" }))).toEqual(["tooLow holdBack"]);
  });
});
