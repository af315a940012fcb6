import { calculation } from "../core/calculation.js";
import { asce7, importanceFactor, windCaution } from "../data/wind.js";

/**
 * Velocity pressure by ASCE 7-05, with the importance factor; it is at allowable level.
 *
 * @example
 * ```ts
 * velocityPressure705({ speed: "90 mph", exposureCoefficient: 0.85, topography: 1, directionality: 0.85, importance: 1 }).velocityPressure.to("psf").toFixed(1); // "15.0"
 * ```
 */
export const velocityPressure705 = /* @__PURE__ */ calculation({
  id: "fasteners.velocity-pressure-7-05",
  title: "Velocity pressure by ASCE 7-05",
  given: {
    speed: { is: "speed", unit: ["mph", "m/s"], symbol: "V", says: "basic wind speed from the map of this edition", above: 0 },
    exposureCoefficient: { is: "ratio", symbol: "K_z", says: "velocity pressure exposure coefficient", above: 0 },
    topography: { is: "ratio", symbol: "K_zt", says: "topographic factor, 1 on flat ground", atLeast: 1 },
    directionality: { is: "ratio", symbol: "K_d", says: "wind directionality factor", above: 0, atMost: 1 },
    importance: { is: "ratio", symbol: "I", says: "importance factor", above: 0 },
  },
  constants: {
    airFactor: { is: "ratio", symbol: "c", value: "0.00256", says: "pressure of the wind, psf to the square of mph", basis: asce7 },
    onePsf: { is: "pressure", unit: "psf", symbol: "psf", value: "1 psf", says: "the pressure in which the equation is written", basis: asce7 },
    oneMph: { is: "speed", unit: "mph", symbol: "mph", value: "1 mph", says: "the speed in which the equation is written", basis: asce7 },
  },
  steps: {
    velocityPressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "q_h", says: "velocity pressure", formula: "airFactor * onePsf * exposureCoefficient * topography * directionality * importance * (speed / oneMph) ^ 2", basis: importanceFactor },
  },
  cautions: [windCaution],
});
