import { calculation } from "../core/calculation.js";
import { arrheniusAge, kelvinScale } from "../data/timing.js";

/**
 * How many times as fast a binder hardens at a temperature as at the reference, by the law of Arrhenius.
 *
 * @example
 * ```ts
 * ageFactorByArrhenius({ temperature: "30 degC", reference: "20 degC", activation: "5000 K" }).ageFactor.to().toFixed(3); // "1.755"
 * ```
 */
export const ageFactorByArrhenius = /* @__PURE__ */ calculation({
  id: "timing.age-factor-by-arrhenius",
  title: "Age factor by the law of Arrhenius",
  given: {
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the mortar", atLeast: "32 degF", atMost: "120 degF" },
    reference: { is: "temperature", unit: ["degF", "degC"], symbol: "T_r", says: "temperature for which the time is known", atLeast: "32 degF", atMost: "120 degF" },
    activation: { is: "temperatureDifference", unit: "K", symbol: "Q", says: "activation energy over the gas constant, in kelvins, of the binder or of the rule", atLeast: "1000 K", atMost: "10000 K" },
  },
  constants: {
    absoluteZero: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "0 K", says: "where absolute temperature begins", basis: kelvinScale },
  },
  steps: {
    ageFactor: {
      is: "ratio", symbol: "f", says: "how many times as fast as at the reference",
      formula: "exp(activation * (1 / (reference - absoluteZero) - 1 / (temperature - absoluteZero)))", basis: arrheniusAge,
    },
  },
  cautions: ["Activation energies are those of cement in concrete; for thin beds with polymers the answer is for planning. No answer is given outside 32 to 120 degF."],
});
