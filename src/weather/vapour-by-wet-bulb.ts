import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { psychrometer, scaleZero, unitOfTheEquation } from "../data/weather.js";

/**
 * Pressure of water vapour in the air and its relative humidity, from the dry and the wet bulb of a psychrometer.
 *
 * @example
 * ```ts
 * const air = vapourByWetBulb({ dryBulb: "68 degF", wetBulb: "62 degF", barometer: "101.325 kPa", drySaturation: "2.338 kPa", wetSaturation: "1.898 kPa" });
 * air.humidity.to("%").toFixed(0); // "71"
 * ```
 */
export const vapourByWetBulb = /* @__PURE__ */ calculation({
  id: "weather.vapour-by-wet-bulb",
  title: "Humidity from dry and wet bulb",
  given: {
    dryBulb: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the dry bulb", atLeast: "32 degF", atMost: "140 degF" },
    wetBulb: { is: "temperature", unit: ["degF", "degC"], symbol: "T_w", says: "temperature of the wet bulb, in moving air", atLeast: "32 degF", atMost: "140 degF" },
    barometer: { is: "pressure", unit: ["inHg", "kPa"], symbol: "p", says: "pressure of the air here, not reduced to the sea", atLeast: "15 inHg", atMost: "33 inHg" },
    drySaturation: { is: "pressure", unit: ["inHg", "kPa"], symbol: "e_s", says: "saturation pressure at the dry bulb", above: 0 },
    wetSaturation: { is: "pressure", unit: ["inHg", "kPa"], symbol: "e_w", says: "saturation pressure at the wet bulb", above: 0 },
  },
  constants: {
    freezing: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "0 degC", says: "where water freezes", basis: scaleZero },
    oneDegree: { is: "temperatureDifference", unit: "degC", symbol: "K", value: "1 degC", says: "the unit for which the equation is written", basis: unitOfTheEquation },
  },
  steps: {
    depression: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D", says: "wet bulb under the dry one", formula: "dryBulb - wetBulb", basis: arithmetic, atLeast: 0 },
    coefficient: { is: "ratio", symbol: "k", says: "coefficient of the psychrometer, to a degree", formula: "0.00066 * (1 + 0.00115 * (wetBulb - freezing) / oneDegree)", basis: psychrometer },
    vapourPressure: { is: "pressure", unit: ["inHg", "kPa"], symbol: "e", says: "pressure of the vapour in the air", formula: "wetSaturation - coefficient * (depression / oneDegree) * barometer", basis: psychrometer, above: 0 },
    humidity: { is: "ratio", unit: "%", symbol: "h", says: "relative humidity", formula: "vapourPressure / drySaturation", basis: psychrometer, atMost: "100 %" },
  },
});
