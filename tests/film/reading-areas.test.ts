import { describe, expect, it } from "vitest";
import { readingAreas } from "../../src/film/reading-areas.js";

describe("readingAreas", () => {
  it("420 ft2 by hundreds are 5 areas, 25 spots, 75 readings", () => {
    const plan = readingAreas({ area: "420 ft2", areaSize: "100 ft2", spotsPerArea: 5, readingsPerSpot: 3 });
    expect([plan.areas, plan.spots, plan.readings].map(String)).toEqual(["5", "25", "75"]);
  });

  it("counts a part as a whole, and no part where there is none", () => {
    const areas = (area: string): string => readingAreas({ area: area as "5 m2", areaSize: "5 m2", spotsPerArea: 1, readingsPerSpot: 1 }).areas.toString();
    expect([areas("5 m2"), areas("5.001 m2"), areas("0.3 m2"), areas("12.5 m2")]).toEqual(["1", "2", "1", "3"]);
  });

  it("refuses an area without size and a spot without reading", () => {
    const tried = readingAreas.try({ area: "420 ft2", areaSize: "0 ft2", spotsPerArea: 0, readingsPerSpot: 0 });
    expect(tried.ok ? [] : tried.problems.map(({ path }) => path.join("."))).toEqual(["areaSize", "spotsPerArea", "readingsPerSpot"]);
  });
});
