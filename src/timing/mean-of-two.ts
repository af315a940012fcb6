import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Mean of two temperatures: of the readings at both ends of an interval, or of the low and the high of a day.
 *
 * @example
 * ```ts
 * meanOfTwo({ one: "30 degF", other: "48 degF" }).mean.toString(); // "39 degF"
 * ```
 */
export const meanOfTwo = /* @__PURE__ */ calculation({
  id: "timing.mean-of-two",
  title: "Mean of two temperatures",
  given: {
    one: { is: "temperature", unit: ["degF", "degC"], symbol: "T_1", says: "one temperature" },
    other: { is: "temperature", unit: ["degF", "degC"], symbol: "T_2", says: "the other temperature" },
  },
  steps: {
    mean: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "mean of the two", formula: "one + (other - one) / 2", basis: arithmetic },
  },
});
