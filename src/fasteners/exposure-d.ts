import { calculation } from "../core/calculation.js";
import { asce7, windCaution } from "../data/wind.js";

/**
 * Velocity pressure exposure coefficient in exposure D (flat, unobstructed ground and water), by the formula of ASCE 7-05 to 7-16.
 *
 * @example
 * ```ts
 * exposureD({ height: "40 ft" }).coefficient.to().toFixed(2); // "1.22"
 * ```
 */
export const exposureD = /* @__PURE__ */ calculation({
  id: "fasteners.exposure-d",
  title: "Exposure coefficient, exposure D",
  given: {
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "mean roof height of the building", above: 0, atMost: "60 ft" },
  },
  constants: {
    leastHeight: { is: "length", unit: ["ft", "m"], symbol: "h_min", value: "15 ft", says: "height below which the coefficient no longer falls, for cladding", basis: asce7 },
    gradientHeight: { is: "length", unit: ["ft", "m"], symbol: "z_g", value: "700 ft", says: "height at which the ground no longer slows the wind", basis: asce7 },
    scale: { is: "ratio", symbol: "c", value: "2.01", says: "scale of the profile", basis: asce7 },
  },
  steps: {
    countedHeight: { is: "length", unit: ["ft", "m"], symbol: "z", says: "height that is counted", formula: "max(height, leastHeight)", basis: asce7 },
    coefficient: { is: "ratio", symbol: "K_z", says: "exposure coefficient", formula: "scale * (countedHeight / gradientHeight) ^ (2 / 11.5)", basis: asce7, differs: "the formula is taken to all its digits, where the table prints two decimals, and at 25 ft 1.12 for 1.126" },
  },
  cautions: [windCaution],
});
