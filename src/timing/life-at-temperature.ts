import { composed } from "../core/composed.js";
import { ageFactorAt } from "./age-factors.js";
import { timeByAgeFactor } from "./time-by-age-factor.js";

/**
 * Life of a batch, or any other time that warmth makes shorter, at a temperature, from the time the data sheet gives at
 * another; by the doubling rule, or by Arrhenius with an activation energy.
 *
 * @example
 * ```ts
 * const life = lifeAtTemperature({ lifeAtReference: "4 h", reference: "70 degF", temperature: "88 degF", rule: "doubling" });
 * life.life.to("h").toFixed(3); // "2.000"
 * life.rule; // "doubling"
 * ```
 */
export const lifeAtTemperature = /* @__PURE__ */ composed({
  id: "timing.life-at-temperature",
  title: "Life at a temperature",
  given: {
    lifeAtReference: { is: "time", unit: "h", symbol: "t_r", says: "life at the reference temperature, from the data sheet", above: 0 },
    reference: { is: "temperature", unit: ["degF", "degC"], symbol: "T_r", says: "temperature the data sheet gives it for", atLeast: "40 degF", atMost: "120 degF" },
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the mortar or the film itself", atLeast: "40 degF", atMost: "120 degF" },
    rule: { oneOf: ["doubling", "Arrhenius"], says: "rule by which warmth shortens it" },
    activation: { is: "temperatureDifference", unit: "K", symbol: "Q", says: "activation energy over the gas constant, in kelvins; for Arrhenius alone", atLeast: "1000 K", atMost: "10000 K", optional: true },
  },
  cautions: ["The life at the reference is that of the data sheet of what was bought."],
  run: ({ lifeAtReference, temperature, ...by }, work) => {
    const ageFactor = ageFactorAt(by, temperature, work);
    return { life: work.part(timeByAgeFactor, { timeAtReference: lifeAtReference, ageFactor }).answers.time, ageFactor, rule: by.rule };
  },
});
