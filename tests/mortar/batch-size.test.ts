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

  describe("with the life of the data sheet, a temperature and a rule", () => {
    const { slake, carry, margin, placingRate, thickness, mixerHolds, volume, bagYield, bagMass, waterLow, waterHigh } = plan;
    const rest = { slake, carry, margin, placingRate, thickness, mixerHolds, volume, bagYield, bagMass, waterLow, waterHigh } as const;
    const sheet = { ...rest, lifeAtReference: "4 h", reference: "70 degF" } as const;

    it("by the doubling rule of UFGS-09971: 4 h at 70 degF is 2 h at 88 degF, and the batch that of 2 h", () => {
      const hot = batchSize({ ...sheet, temperature: "88 degF", rule: "doubling" });
      expect([hot.life.to("min").toFixed(9), hot.dryMass.to("lb").toFixed(9), hot.rule]).toEqual(["120.000000000", "100.000000000", "doubling"]);
      expect(batchSize(plan)).not.toHaveProperty("rule");
    });

    it("by Arrhenius with 5000 K: 240 min at 70 degF is 240 / 1.748 = 137.3 min at 88 degF", () => {
      // 70 degF = 294.2611 K, 88 degF = 304.2611 K; 5000 (1/294.2611 - 1/304.2611) = 0.558458; its exponential is 1.74798
      const hot = batchSize({ ...sheet, temperature: "88 degF", rule: "Arrhenius", activation: "5000 K" });
      expect(hot.life.to("min").toFixed(1)).toBe("137.3");
      expect(hot.placingTime.toNumber("min")).toBeCloseTo(hot.life.toNumber("min") - 60, 9);
    });

    it("shows how the life came about, and stands on the rule's source", () => {
      const { parts, bases } = batchSize.solve({ ...sheet, temperature: "88 degF", rule: "doubling" });
      expect(parts.map(({ id }) => id)).toEqual(["timing.life-at-temperature", "mortar.batch-volume", "mortar.mixing-water"]);
      expect(bases.some((basis) => basis.kind === "published" && basis.title.startsWith("UFGS-09971"))).toBe(true);
    });

    it("refuses what is lacking beside it, what is out of the range of the rule, and any of it beside a life", () => {
      expect(faults(batchSize.try(sheet))).toEqual(["missing temperature", "missing rule"]);
      expect(faults(batchSize.try({ ...sheet, temperature: "88 degF", rule: "Arrhenius" }))).toEqual(["missing activation"]);
      expect(faults(batchSize.try({ ...sheet, temperature: "88 degF", rule: "doubling", activation: "5000 K" }))).toEqual(["refused activation"]);
      expect(faults(batchSize.try({ ...sheet, temperature: "121 degF", rule: "doubling" }))).toEqual(["tooHigh temperature"]);
      expect(faults(batchSize.try({ ...plan, temperature: "88 degF", rule: "doubling" }))).toEqual(["refused temperature", "refused rule"]);
      expect(faults(batchSize.try({ ...sheet, life: "2 h", temperature: "88 degF", rule: "doubling" }))).toEqual(["either life"]);
      expect(faults(batchSize.try(rest))).toEqual(["either life"]);
    });

    it("refuses a life too short in the heat for its slaking and carrying", () => {
      expect(faults(batchSize.try({ ...sheet, lifeAtReference: "2 h", temperature: "88 degF", rule: "doubling" }))).toEqual(["tooLow placingTime"]);
    });
  });
});
