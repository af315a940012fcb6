import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Mean of film readings, or of the means of spots.
 *
 * @example
 * ```ts
 * filmMean({ total: "42.9 mil", readings: 5 }).mean.toString(); // "8.58 mil"
 * ```
 */
export const filmMean = /* @__PURE__ */ calculation({
  id: "film.film-mean",
  title: "Mean film",
  given: {
    total: { is: "length", unit: ["mil", "um"], symbol: "T", says: "readings, added up", above: 0 },
    readings: { is: "count", symbol: "n", says: "how many readings", atLeast: 1, whole: true },
  },
  steps: {
    mean: { is: "length", unit: ["mil", "um"], symbol: "t", formula: "total / readings", basis: arithmetic },
  },
});
