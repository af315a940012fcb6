import { describe, expect, it } from "vitest";
import { filmReadingPlan } from "../../src/film/film-reading-plan.js";
import { expectPrinted, vector } from "../support/vectors.js";

describe("filmReadingPlan", () => {
  it("12,500 ft2 by SSPC-PA 2: 15 areas, 75 spots, 225 readings (PaintSquare News, 25 November 2014)", () => {
    const { inputs, expected } = vector("pa2-12500");
    const plan = filmReadingPlan({ area: inputs.coated_area as "12500 ft2", rule: "SSPC-PA 2" });
    expectPrinted(plan.areas.to(), expected.areas);
    expectPrinted(plan.spots.to(), expected.spots);
    expectPrinted(plan.readings.to(), expected.readings_min);
    expect(plan.rule).toBe("SSPC-PA 2");
  });

  it("one area of 100 ft2 or part has 5 spots by SSPC-PA 2", () => {
    const row = vector("pa2-area");
    expect(row.inputs.area).toContain("100 ft2");
    for (const area of ["100 ft2", "40 ft2"] as const) {
      expectPrinted(filmReadingPlan({ area, rule: "SSPC-PA 2" }).spots.to(), row.inputs.spots);
    }
  });

  it("5 spots of 3 readings in each 100 ft2 by SSPC-PA 9 (as quoted on study cards)", () => {
    const row = vector("pa9-freq");
    const solution = filmReadingPlan.solve({ area: "100 ft2", rule: "SSPC-PA 9" });
    expectPrinted(solution.answers.spots.to(), row.expected.spots);
    expect(row.expected.readings_per_spot).toBe(">= 3");
    expect(solution.answers.readings.toString()).toBe("15");
    expect([row.expected.circle, row.expected.reading_spacing]).toEqual(["6 in (15 cm)", ">= 2 in (5 cm)"]);
    expect(solution.answers.spot).toBe("readings 2 in or more apart within a circle of 6 in");
    expect(filmReadingPlan({ area: "1001 ft2", rule: "SSPC-PA 9" }).areas.toString()).toBe("11");
    expect(solution.bases.some((basis) => basis.kind === "published" && basis.quotedBy === "study cards")).toBe(true);
  });

  it("1 reading for each 5 m2 by IMO PSPC", () => {
    const row = vector("pspc-freq");
    expectPrinted(filmReadingPlan({ area: row.inputs.area as "5 m2", rule: "IMO PSPC" }).readings.to(), row.expected.readings);
    expect(filmReadingPlan({ area: "5.1 m2", rule: "IMO PSPC" }).readings.toString()).toBe("2");
  });

  it("a rule of one's own, with nothing said of how the readings lie", () => {
    const plan = filmReadingPlan({ area: "1250 ft2", rule: "own", areaSize: "500 ft2", spotsPerArea: 4, readingsPerSpot: 2 });
    expect([plan.areas, plan.spots, plan.readings].map(String)).toEqual(["3", "12", "24"]);
    expect(plan).not.toHaveProperty("spot");
  });

  it("refuses to guess the rule, half a rule of one's own, and figures beside a published one", () => {
    const codes = (input: object): readonly unknown[] => {
      const tried = filmReadingPlan.try({ area: "1250 ft2", ...input });
      return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
    };
    expect(codes({})).toEqual([["missing", "rule"]]);
    expect(codes({ rule: "SSPC-PA 3" })).toEqual([["notAChoice", "rule"]]);
    expect(codes({ rule: "own", spotsPerArea: 5 })).toEqual([["missing", "areaSize"]]);
    expect(codes({ rule: "SSPC-PA 2", areaSize: "50 ft2", spotsPerArea: 5 })).toEqual([["refused", "areaSize"], ["refused", "spotsPerArea"]]);
  });

  it("says what of a rule of your own is not there", () => {
    const wanted = (own: object): string | undefined => {
      const tried = filmReadingPlan.try({ area: "100 ft2", rule: "own", ...own });
      return tried.ok ? undefined : tried.problems[0]?.wanted;
    };
    expect(wanted({ areaSize: "100 ft2" })).toBe("a rule of your own needs spotsPerArea and readingsPerSpot");
    expect(wanted({ spotsPerArea: 5 })).toBe("a rule of your own needs areaSize and readingsPerSpot");
    expect(wanted({ areaSize: "100 ft2", spotsPerArea: 5 })).toBe("a rule of your own needs readingsPerSpot");
    expect(wanted({ spotsPerArea: 5, readingsPerSpot: 3 })).toBe("a rule of your own needs areaSize");
  });
});
