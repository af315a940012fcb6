import { calculation } from "../core/calculation.js";
import { scaleZero, unitOfTheEquation, uno } from "../data/weather.js";

/**
 * Evaporation from a wet surface by Uno's formula in metric units.
 *
 * @example
 * ```ts
 * evaporationUnoSi({ mortarTemperature: "30 degC", airTemperature: "25 degC", humidity: "50 %", wind: "10 km/h" }).rate.to("kg/m2/h").toFixed(6); // "0.693016"
 * ```
 */
export const evaporationUnoSi = /* @__PURE__ */ calculation({
  id: "weather.evaporation-uno-si",
  title: "Evaporation by Uno, metric",
  given: {
    mortarTemperature: { is: "temperature", unit: ["degC", "degF"], symbol: "T_c", says: "temperature of the mortar at its surface", atLeast: "0 degC", atMost: "60 degC" },
    airTemperature: { is: "temperature", unit: ["degC", "degF"], symbol: "T_a", says: "temperature of the air at the wall", atLeast: "0 degC", atMost: "60 degC" },
    humidity: { is: "ratio", unit: "%", symbol: "r", says: "relative humidity of the air, over water", atLeast: 0, atMost: "100 %" },
    wind: { is: "speed", unit: ["km/h", "mph"], symbol: "V", says: "wind at 0.5 m from the surface", atLeast: 0, atMost: "100 km/h" },
  },
  constants: {
    zero: { is: "temperature", unit: ["degC", "degF"], symbol: "T_0", value: "0 degC", says: "zero of the scale the formula is written in", basis: scaleZero },
    oneDegree: { is: "temperatureDifference", unit: "degC", symbol: "K", value: "1 degC", says: "the unit for which the formula is written", basis: unitOfTheEquation },
    oneKmh: { is: "speed", unit: ["km/h", "mph"], symbol: "v", value: "1 km/h", says: "the unit for which the formula is written", basis: unitOfTheEquation },
    oneRate: { is: "evaporation", unit: ["kg/m2/h", "lb/ft2/h"], symbol: "w", value: "1 kg/m2/h", says: "the unit for which the formula is written", basis: unitOfTheEquation },
  },
  steps: {
    mortarTerm: { is: "ratio", symbol: "m", says: "term of the mortar", formula: "((mortarTemperature - zero) / oneDegree + 18) ^ 2.5", basis: uno },
    airTerm: { is: "ratio", symbol: "a", says: "term of the air", formula: "humidity * ((airTemperature - zero) / oneDegree + 18) ^ 2.5", basis: uno },
    rate: { is: "evaporation", unit: ["kg/m2/h", "lb/ft2/h"], symbol: "E", says: "evaporation; below nought it is condensation", formula: "5 * (mortarTerm - airTerm) * (wind / oneKmh + 4) / 1000000 * oneRate", basis: uno },
  },
});
