import { calculation } from "../core/calculation.js";
import { magnus, scaleZero } from "../data/weather.js";

/**
 * Dew point of air from its temperature and relative humidity, over water; below freezing the frost point is a little higher.
 *
 * @example
 * ```ts
 * dewPoint({ airTemperature: "70 degF", humidity: "65 %" }).dewPoint.to("degF").toFixed(1); // "57.7"
 * ```
 */
export const dewPoint = /* @__PURE__ */ calculation({
  id: "weather.dew-point",
  title: "Dew point",
  given: {
    airTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the air at the wall", atLeast: "-4 degF", atMost: "140 degF" },
    humidity: { is: "ratio", unit: "%", symbol: "h", says: "relative humidity of the air, over water", atLeast: "1 %", atMost: "100 %" },
  },
  constants: {
    magnusA: { is: "ratio", symbol: "a", value: "17.27", says: "constant of the Magnus form over water", basis: magnus },
    magnusB: { is: "temperatureDifference", unit: "degC", symbol: "b", value: "237.3 degC", says: "constant of the Magnus form over water", basis: magnus },
    freezing: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "0 degC", says: "where water freezes", basis: scaleZero },
  },
  steps: {
    gamma: { is: "ratio", symbol: "g", says: "logarithm of the vapour pressure against that at freezing", formula: "ln(humidity) + magnusA * (airTemperature - freezing) / (magnusB + (airTemperature - freezing))", basis: magnus },
    overFreezing: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D", says: "dew point over freezing", formula: "magnusB * gamma / (magnusA - gamma)", basis: magnus },
    dewPoint: { is: "temperature", unit: ["degF", "degC"], symbol: "T_d", says: "dew point over water", formula: "freezing + overFreezing", basis: magnus },
  },
  cautions: ["Read air and humidity at the wall, not at a station; shade and sun sides differ."],
});
