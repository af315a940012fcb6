import { calculation } from "../core/calculation.js";
import { asce7, windCaution } from "../data/wind.js";

/**
 * Velocity pressure by ASCE 7-10, at strength level.
 *
 * @example
 * ```ts
 * velocityPressure710({ speed: "115 mph", exposureCoefficient: 0.85, topography: 1, directionality: 0.85 }).velocityPressure.to("psf").toFixed(1); // "24.5"
 * ```
 */
export const velocityPressure710 = /* @__PURE__ */ calculation({
  id: "fasteners.velocity-pressure-7-10",
  title: "Velocity pressure by ASCE 7-10",
  given: {
    speed: { is: "speed", unit: ["mph", "m/s"], symbol: "V", says: "basic wind speed from the map of this edition", above: 0 },
    exposureCoefficient: { is: "ratio", symbol: "K_z", says: "velocity pressure exposure coefficient", above: 0 },
    topography: { is: "ratio", symbol: "K_zt", says: "topographic factor, 1 on flat ground", atLeast: 1 },
    directionality: { is: "ratio", symbol: "K_d", says: "wind directionality factor", above: 0, atMost: 1 },
  },
  constants: {
    airFactor: { is: "ratio", symbol: "c", value: "0.00256", says: "pressure of the wind, psf to the square of mph", basis: asce7 },
    onePsf: { is: "pressure", unit: "psf", symbol: "psf", value: "1 psf", says: "the pressure in which the equation is written", basis: asce7 },
    oneMph: { is: "speed", unit: "mph", symbol: "mph", value: "1 mph", says: "the speed in which the equation is written", basis: asce7 },
  },
  steps: {
    velocityPressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "q_h", says: "velocity pressure", formula: "airFactor * onePsf * exposureCoefficient * topography * directionality * (speed / oneMph) ^ 2", basis: asce7 },
  },
  cautions: [windCaution],
});
