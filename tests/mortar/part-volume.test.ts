import { describe, expect, it } from "vitest";
import { partVolume } from "../../src/mortar/part-volume.js";
import { faults } from "../support/faults.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("partVolume", () => {
  it("gives the cement and water of the US Navy's example of ACI 211.1 (NAVEDTRA 14071, page 17-7)", () => {
    // The source takes water at 62.4 lb/ft3, we at 1 kg/L = 62.43 lb/ft3: 3.103 against 3.102, 4.888 against 4.886.
    const cement = vector("navy-ea-absolute-volume-cement");
    expect(cement.inputs).toMatchObject({ mass: "610 lb", sg: "3.15" });
    expectPrinted(partVolume({ mass: "610 lb", relativeDensity: 3.15 }).volume.to("ft3"), cement.expected.volume);
    const water = vector("navy-ea-absolute-volume-water");
    expect(water.inputs).toMatchObject({ mass: "305 lb", sg: "1" });
    expectPrinted(partVolume({ mass: "305 lb", relativeDensity: 1 }).volume.to("ft3"), water.expected.volume);
  });

  it("is the mass in litres for water, and tells where it departs from its source", () => {
    const solution = partVolume.solve({ mass: "21 kg", relativeDensity: 1 });
    expect(solution.answers.volume.toString()).toBe("21 L");
    expect(solution.steps[0]?.differs).toContain("62.4 lb/ft3");
  });

  it("refuses a density in the place of a relative density", () => {
    expect(faults(partVolume.try({ mass: "610 lb", relativeDensity: 196 }))).toEqual(["tooHigh relativeDensity"]);
    expect(faults(partVolume.try({ mass: "610 lb", relativeDensity: 0 }))).toEqual(["tooLow relativeDensity"]);
  });
});
