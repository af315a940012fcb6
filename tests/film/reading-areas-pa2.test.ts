import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readingAreasPa2 } from "../../src/film/reading-areas-pa2.js";
import { expectPrinted, vector, vectors } from "../support/vectors.js";

const areasAt = (area: string): string => readingAreasPa2({ area: area as "80 ft2" }).areas.toString();

describe("readingAreasPa2", () => {
  it.each([...vectors("pa2-freq-"), vector("pa2-12500")])("$id: $inputs.coated_area", ({ inputs, expected }) => {
    const plan = readingAreasPa2({ area: inputs.coated_area as "80 ft2" });
    expectPrinted(plan.areas.to(), expected.areas);
    expectPrinted(plan.spots.to(), expected.spots);
    expectPrinted(plan.readings.to(), expected.readings_min);
  });

  it("has the edges of the rule: every 100 ft2 up to 300, 3 up to 1,000, 1 for each further 1,000 or part", () => {
    expect(["0.1 ft2", "100 ft2", "100.1 ft2", "200 ft2", "201 ft2", "300 ft2", "301 ft2"].map(areasAt)).toEqual(["1", "1", "2", "2", "3", "3", "3"]);
    expect(["1000 ft2", "1001 ft2", "2000 ft2", "2000.1 ft2"].map(areasAt)).toEqual(["3", "4", "4", "5"]);
  });

  it("follows the rule as it reads, band by band", () => {
    const byBands = (area: number): number => (area <= 300 ? Math.ceil(area / 100) : area <= 1000 ? 3 : 3 + Math.ceil((area - 1000) / 1000));
    fc.assert(fc.property(fc.integer({ min: 1, max: 30000 }), (area) => {
      expect(areasAt(`${String(area)} ft2`)).toBe(String(byBands(area)));
    }));
  });

  it("counts an area in m2 by the square feet it has", () => {
    // 27.87 m2 is 299.99 ft2, 27.88 m2 is 300.1 ft2; 92.903 m2 is 1,000.0 ft2 and a hair less
    expect([areasAt("18 m2"), areasAt("18.6 m2"), areasAt("92.903 m2"), areasAt("92.904 m2")]).toEqual(["2", "3", "3", "4"]);
  });

  it("refuses nothing to coat", () => {
    expect(readingAreasPa2.try({ area: "0 ft2" })).toMatchObject({ ok: false, problems: [{ code: "tooLow", path: ["area"] }] });
  });
});
