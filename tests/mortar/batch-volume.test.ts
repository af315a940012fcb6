import { describe, expect, it } from "vitest";
import { batchVolume } from "../../src/mortar/batch-volume.js";
import { faults } from "../support/faults.js";

const crew = {
  life: "2 h", slake: "20 min", carry: "10 min", margin: "30 min", placingRate: "24 ft2/h", thickness: "1/2 in",
  mixerHolds: "2 ft3", volume: "12 ft3", bagYield: "0.5 ft3", bagMass: "50 lb",
} as const;

describe("batchVolume", () => {
  it("is rate times the time left times the bed", () => {
    // 120 - 20 - 10 - 30 = 60 min; 24 ft2/h x 1 h = 24 ft2; x 1/24 ft = 1 ft3 = 2 bags = 100 lb; 12 batches to the batch.
    const batch = batchVolume.solve(crew);
    const { placingTime, areaPerBatch, dryMass, batches } = batch.answers;
    expect([placingTime, batch.answers.batch, areaPerBatch, dryMass, batches].map(String)).toEqual(["60 min", "1 ft3", "24 ft2", "100 lb", "12"]);
    expect(batch.steps.find(({ name }) => name === "batch")?.governedBy).toBe("crewPlaces");
    expect(batchVolume({ ...crew, volume: "12.01 ft3" }).batches.toString()).toBe("13");
  });

  it("holds no more than the mixer", () => {
    const batch = batchVolume.solve({ ...crew, mixerHolds: "0.5 ft3" });
    expect([batch.answers.batch, batch.answers.areaPerBatch, batch.answers.batches].map(String)).toEqual(["0.5 ft3", "12 ft2", "24"]);
    expect(batch.steps.find(({ name }) => name === "batch")?.governedBy).toBe("mixerHolds");
  });

  it("halves where the heat halves what is left of the life", () => {
    // Life 90 min: 30 min left, half a cubic foot.
    expect(batchVolume({ ...crew, life: "90 min" }).batch.toString()).toBe("0.5 ft3");
  });

  it("refuses a life that is over before the mortar is at the wall", () => {
    expect(faults(batchVolume.try({ ...crew, life: "60 min" }))).toEqual(["tooLow placingTime"]);
    expect(batchVolume.try({ ...crew, life: "61 min" }).ok).toBe(true);
    expect(faults(batchVolume.try({ ...crew, placingRate: "24 ft2" }))).toEqual(["wrongDimension placingRate"]);
  });
});
