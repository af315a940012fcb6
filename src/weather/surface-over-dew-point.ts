import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * How far a surface is over the point where dew or frost forms on it, and what is left over the margin that a rule asks.
 *
 * @example
 * ```ts
 * surfaceOverDewPoint({ surfaceTemperature: "62 degF", condensesAt: "57 degF", leastMargin: "5 degF" }).marginLeft.toString(); // "0 degF"
 * ```
 */
export const surfaceOverDewPoint = /* @__PURE__ */ calculation({
  id: "weather.surface-over-dew-point",
  title: "Surface over the dew point",
  given: {
    surfaceTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_s", says: "temperature of the surface itself", atLeast: "-4 degF", atMost: "200 degF" },
    condensesAt: { is: "temperature", unit: ["degF", "degC"], symbol: "T_d", says: "dew point, or frost point below freezing" },
    leastMargin: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "m", says: "margin that the rule asks for", atLeast: 0 },
  },
  steps: {
    over: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D", says: "surface over the point where dew or frost forms", formula: "surfaceTemperature - condensesAt", basis: arithmetic },
    marginLeft: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "l", says: "what is left over the margin; below nought where it is not met", formula: "over - leastMargin", basis: arithmetic },
  },
});
