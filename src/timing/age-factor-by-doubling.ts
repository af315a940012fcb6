import { calculation } from "../core/calculation.js";
import { doublingRule } from "../data/timing.js";

/**
 * How many times as fast things go at a temperature as at the reference, where 18 degF (10 degC) doubles it.
 *
 * @example
 * ```ts
 * ageFactorByDoubling({ temperature: "88 degF", reference: "70 degF" }).ageFactor.to().toFixed(6); // "2.000000"
 * ```
 */
export const ageFactorByDoubling = /* @__PURE__ */ calculation({
  id: "timing.age-factor-by-doubling",
  title: "Age factor by the doubling rule",
  given: {
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the mortar or the film", atLeast: "32 degF", atMost: "120 degF" },
    reference: { is: "temperature", unit: ["degF", "degC"], symbol: "T_r", says: "temperature for which the time is known", atLeast: "32 degF", atMost: "120 degF" },
  },
  constants: {
    doublingStep: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "d", value: "18 degF", says: "warming that makes it twice as fast", basis: doublingRule },
  },
  steps: {
    stepsWarmer: { is: "ratio", symbol: "n", says: "doublings above the reference", formula: "(temperature - reference) / doublingStep", basis: doublingRule },
    ageFactor: { is: "ratio", symbol: "f", says: "how many times as fast as at the reference", formula: "exp(stepsWarmer * ln(2))", basis: doublingRule },
  },
  cautions: ["The doubling rule is for planning, from 32 to 120 degF; the data sheet and the test at the wall come first."],
});
