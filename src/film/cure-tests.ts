import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { cureTestCount } from "../data/film.js";

/**
 * Tests of a coating for cure, wiped with solvent: three in the first 1,000 ft2 and one more in each further 1,000 ft2 or part.
 *
 * @example
 * ```ts
 * cureTests({ area: "3500 ft2" }).tests.toString(); // "6"
 * ```
 */
export const cureTests = /* @__PURE__ */ calculation({
  id: "film.cure-tests",
  title: "Tests of a coating for cure",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area that is coated", above: 0 },
  },
  constants: {
    band: { is: "area", unit: "ft2", symbol: "A_1", value: "1000 ft2", says: "coated area with the first tests, and each further one with 1 more", basis: cureTestCount },
    firstTests: { is: "count", symbol: "n_1", value: 3, says: "tests in the first 1,000 ft2", basis: cureTestCount },
  },
  steps: {
    bands: { is: "count", symbol: "k", says: "areas of 1,000 ft2 or part", formula: "ceil(area / band)", basis: arithmetic },
    tests: { is: "count", symbol: "n", says: "tests", formula: "firstTests + bands - 1", basis: cureTestCount },
  },
  cautions: ["The rule is one for coatings on steel. The data sheet says whether a barrier may be wiped with solvent and how it is told to be cured; the specification says how often."],
});
