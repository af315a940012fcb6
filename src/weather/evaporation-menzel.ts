import { calculation } from "../core/calculation.js";
import { menzel, unitOfTheEquation } from "../data/weather.js";

/**
 * Evaporation from a wet surface by Menzel's equation, that of the ACI nomograph.
 *
 * @example
 * ```ts
 * evaporationMenzel({ mortarSaturation: "0.6 psi", airSaturation: "0.5 psi", humidity: "50 %", wind: "10 mph" }).rate.to("lb/ft2/h").toFixed(3); // "0.187"
 * ```
 */
export const evaporationMenzel = /* @__PURE__ */ calculation({
  id: "weather.evaporation-menzel",
  title: "Evaporation by Menzel",
  given: {
    mortarSaturation: { is: "pressure", unit: ["psi", "kPa"], symbol: "e_0", says: "saturation pressure at the temperature of the mortar", above: 0 },
    airSaturation: { is: "pressure", unit: ["psi", "kPa"], symbol: "e_a", says: "saturation pressure at the temperature of the air", above: 0 },
    humidity: { is: "ratio", unit: "%", symbol: "r", says: "relative humidity of the air, over water", atLeast: 0, atMost: "100 %" },
    wind: { is: "speed", unit: ["mph", "km/h"], symbol: "V", says: "wind at 20 in (0.5 m) from the surface", atLeast: 0, atMost: "60 mph" },
  },
  constants: {
    onePsi: { is: "pressure", unit: ["psi", "kPa"], symbol: "p", value: "1 psi", says: "the unit for which the equation is written", basis: unitOfTheEquation },
    oneMph: { is: "speed", unit: ["mph", "km/h"], symbol: "v", value: "1 mph", says: "the unit for which the equation is written", basis: unitOfTheEquation },
    oneRate: { is: "evaporation", unit: ["lb/ft2/h", "kg/m2/h"], symbol: "w", value: "1 lb/ft2/h", says: "the unit for which the equation is written", basis: unitOfTheEquation },
  },
  steps: {
    drive: { is: "ratio", symbol: "d", says: "pressure that drives the vapour off, in psi", formula: "(mortarSaturation - humidity * airSaturation) / onePsi", basis: menzel },
    rate: { is: "evaporation", unit: ["lb/ft2/h", "kg/m2/h"], symbol: "W", says: "evaporation; below nought it is condensation", formula: "0.44 * drive * (0.253 + 0.096 * wind / oneMph) * oneRate", basis: menzel },
  },
});
