import { calculation } from "../core/calculation.js";
import { scaleZero, tetens } from "../data/weather.js";

/**
 * Pressure of water vapour in air that can take no more, over water.
 *
 * @example
 * ```ts
 * saturationPressure({ temperature: "24.5 degC" }).saturation.to("kPa").toFixed(3); // "3.075"
 * ```
 */
export const saturationPressure = /* @__PURE__ */ calculation({
  id: "weather.saturation-pressure",
  title: "Saturation pressure of water vapour",
  given: {
    temperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the air, or of the wet surface", atLeast: "32 degF", atMost: "140 degF" },
  },
  constants: {
    tetensA: { is: "ratio", symbol: "a", value: "17.27", says: "constant of the formula", basis: tetens },
    tetensB: { is: "temperatureDifference", unit: "degC", symbol: "b", value: "237.3 degC", says: "constant of the formula", basis: tetens },
    atFreezing: { is: "pressure", unit: ["inHg", "kPa"], symbol: "e_0", value: "0.6108 kPa", says: "saturation pressure at freezing", basis: tetens },
    freezing: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "0 degC", says: "where water freezes", basis: scaleZero },
  },
  steps: {
    saturation: { is: "pressure", unit: ["inHg", "kPa"], symbol: "e_s", says: "saturation pressure", formula: "atFreezing * exp(tetensA * (temperature - freezing) / (tetensB + (temperature - freezing)))", basis: tetens },
  },
});
