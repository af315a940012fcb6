import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Areas, spots and readings of film where every so many square feet or metres, or part of them, are one area of readings.
 *
 * @example
 * ```ts
 * const plan = readingAreas({ area: "420 ft2", areaSize: "100 ft2", spotsPerArea: 5, readingsPerSpot: 3 });
 * plan.areas.toString(); // "5"
 * plan.readings.toString(); // "75"
 * ```
 */
export const readingAreas = /* @__PURE__ */ calculation({
  id: "film.reading-areas",
  title: "Film readings by size of area",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area that is coated", above: 0 },
    areaSize: { is: "area", unit: ["ft2", "m2"], symbol: "A_1", says: "size of one area of readings", above: 0 },
    spotsPerArea: { is: "count", symbol: "s", says: "spots in an area", atLeast: 1, whole: true },
    readingsPerSpot: { is: "count", symbol: "r", says: "readings at a spot", atLeast: 1, whole: true },
  },
  steps: {
    areas: { is: "count", symbol: "n", says: "areas of readings", formula: "ceil(area / areaSize)", basis: arithmetic },
    spots: { is: "count", symbol: "N_s", formula: "areas * spotsPerArea", basis: arithmetic },
    readings: { is: "count", symbol: "N_r", formula: "spots * readingsPerSpot", basis: arithmetic },
  },
});
