import { describe, expect, it } from "vitest";
import { waterLeft } from "../../src/mortar/water-left.js";
import { faults } from "../support/faults.js";

const batch = { dryMass: "25 lb", bagMass: "50 lb", waterHigh: "6 qt" } as const;

describe("waterLeft", () => {
  it("is what the high figure allows less what was poured", () => {
    // Half a bag: 3 qt at most.
    expect(waterLeft({ ...batch, poured: "0 qt" }).left.toString()).toBe("3 qt");
    expect(waterLeft({ ...batch, poured: "2-3/4 qt" }).left.toString()).toBe("0.25 qt");
    expect(waterLeft({ ...batch, poured: "3 qt" }).left.toString()).toBe("0 qt");
  });

  it("is refused where more was poured than the bag allows", () => {
    const tried = waterLeft.try({ ...batch, poured: "3.01 qt" });
    expect(faults(tried)).toEqual(["tooLow left"]);
    expect(tried.ok ? "" : tried.problems[0]?.message).toContain("the batch has more than the bag allows");
  });
});
