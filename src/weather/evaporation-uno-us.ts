import { calculation } from "../core/calculation.js";
import { scaleZero, unitOfTheEquation, uno } from "../data/weather.js";

/**
 * Evaporation from a wet surface by Uno's formula in units of the United States.
 *
 * @example
 * ```ts
 * evaporationUnoUs({ mortarTemperature: "87 degF", airTemperature: "80 degF", humidity: "50 %", wind: "12 mph" }).rate.to("lb/ft2/h").toFixed(6); // "0.243468"
 * ```
 */
export const evaporationUnoUs = /* @__PURE__ */ calculation({
  id: "weather.evaporation-uno-us",
  title: "Evaporation by Uno, United States",
  given: {
    mortarTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_c", says: "temperature of the mortar at its surface", atLeast: "32 degF", atMost: "140 degF" },
    airTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_a", says: "temperature of the air at the wall", atLeast: "32 degF", atMost: "140 degF" },
    humidity: { is: "ratio", unit: "%", symbol: "r", says: "relative humidity of the air, over water", atLeast: 0, atMost: "100 %" },
    wind: { is: "speed", unit: ["mph", "km/h"], symbol: "V", says: "wind at 20 in (0.5 m) from the surface", atLeast: 0, atMost: "60 mph" },
  },
  constants: {
    zero: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "0 degF", says: "zero of the scale the formula is written in", basis: scaleZero },
    oneDegree: { is: "temperatureDifference", unit: "degF", symbol: "F", value: "1 degF", says: "the unit for which the formula is written", basis: unitOfTheEquation },
    oneMph: { is: "speed", unit: ["mph", "km/h"], symbol: "v", value: "1 mph", says: "the unit for which the formula is written", basis: unitOfTheEquation },
    oneRate: { is: "evaporation", unit: ["lb/ft2/h", "kg/m2/h"], symbol: "w", value: "1 lb/ft2/h", says: "the unit for which the formula is written", basis: unitOfTheEquation },
  },
  steps: {
    mortarTerm: { is: "ratio", symbol: "m", says: "term of the mortar", formula: "((mortarTemperature - zero) / oneDegree) ^ 2.5", basis: uno },
    airTerm: { is: "ratio", symbol: "a", says: "term of the air", formula: "humidity * ((airTemperature - zero) / oneDegree) ^ 2.5", basis: uno },
    rate: { is: "evaporation", unit: ["lb/ft2/h", "kg/m2/h"], symbol: "E", says: "evaporation; below nought it is condensation", formula: "(mortarTerm - airTerm) * (1 + 0.4 * wind / oneMph) / 1000000 * oneRate", basis: uno },
  },
});
