import { calculation } from "../core/calculation.js";
import { magnus, magnusOverIce, scaleZero } from "../data/weather.js";

/**
 * Frost point from a dew point below freezing: where frost forms on a surface, a little before dew would.
 *
 * @example
 * ```ts
 * frostPoint({ dewPoint: "-2.9575 degC" }).frostPoint.to("degC").toFixed(2); // "-2.62"
 * ```
 */
export const frostPoint = /* @__PURE__ */ calculation({
  id: "weather.frost-point",
  title: "Frost point",
  given: {
    dewPoint: { is: "temperature", unit: ["degF", "degC"], symbol: "T_d", says: "dew point over water, below freezing", atLeast: "-76 degF", atMost: "32 degF" },
  },
  constants: {
    magnusA: { is: "ratio", symbol: "a", value: "17.27", says: "constant of the Magnus form over water", basis: magnus },
    magnusB: { is: "temperatureDifference", unit: "degC", symbol: "b", value: "237.3 degC", says: "constant of the Magnus form over water", basis: magnus },
    iceA: { is: "ratio", symbol: "a_i", value: "22.46", says: "constant of the Magnus form over ice", basis: magnusOverIce },
    iceB: { is: "temperatureDifference", unit: "degC", symbol: "b_i", value: "272.62 degC", says: "constant of the Magnus form over ice", basis: magnusOverIce },
    freezing: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "0 degC", says: "where water freezes", basis: scaleZero },
  },
  steps: {
    gamma: { is: "ratio", symbol: "g", says: "logarithm of the vapour pressure against that at freezing", formula: "magnusA * (dewPoint - freezing) / (magnusB + (dewPoint - freezing))", basis: magnus },
    frostPoint: { is: "temperature", unit: ["degF", "degC"], symbol: "T_f", says: "frost point", formula: "freezing + iceB * gamma / (iceA - gamma)", basis: magnusOverIce },
  },
});
