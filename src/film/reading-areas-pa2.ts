import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { pa2Frequency } from "../data/film.js";

/**
 * Areas, spots and readings of dry film by SSPC-PA 2, counted in square feet.
 *
 * @example
 * ```ts
 * const plan = readingAreasPa2({ area: "12500 ft2" });
 * plan.areas.toString(); // "15"
 * plan.spots.toString(); // "75"
 * plan.readings.toString(); // "225"
 * ```
 */
export const readingAreasPa2 = /* @__PURE__ */ calculation({
  id: "film.reading-areas-pa2",
  title: "Film readings by SSPC-PA 2",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area that is coated", above: 0 },
  },
  constants: {
    areaSize: { is: "area", unit: "ft2", symbol: "A_1", value: "100 ft2", says: "size of one area of readings", basis: pa2Frequency },
    band: { is: "area", unit: "ft2", symbol: "A_2", value: "1000 ft2", says: "coated area with 3 areas of readings, and each further one with 1 more", basis: pa2Frequency },
    firstAreas: { is: "count", symbol: "a_1", value: 3, says: "most areas of readings in the first 1,000 ft2", basis: pa2Frequency },
    spotsPerArea: { is: "count", symbol: "s", value: 5, says: "spots in an area", basis: pa2Frequency },
    readingsPerSpot: { is: "count", symbol: "r", value: 3, says: "least readings at a spot", basis: pa2Frequency },
  },
  steps: {
    hundreds: { is: "count", symbol: "h", says: "areas of 100 ft2 or part", formula: "ceil(area / areaSize)", basis: arithmetic },
    first: { is: "count", symbol: "n_1", says: "areas of readings in the first 1,000 ft2", formula: "min(firstAreas, hundreds)", basis: pa2Frequency },
    thousands: { is: "count", symbol: "k", says: "areas of 1,000 ft2 or part beyond the first; not above nought where there are none", formula: "ceil((area - band) / band)", basis: arithmetic },
    further: { is: "count", symbol: "n_2", says: "areas of readings beyond the first 1,000 ft2", formula: "max(0, thousands)", basis: pa2Frequency },
    areas: { is: "count", symbol: "n", says: "areas of readings", formula: "first + further", basis: arithmetic },
    spots: { is: "count", symbol: "N_s", formula: "areas * spotsPerArea", basis: arithmetic },
    readings: { is: "count", symbol: "N_r", says: "least readings", formula: "spots * readingsPerSpot", basis: arithmetic },
  },
  cautions: ["Counted by the square feet of the rule; its metric text counts by 10 m2, which is not the same."],
});
