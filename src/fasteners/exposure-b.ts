import { calculation } from "../core/calculation.js";
import { asce7, exposureBLeast, windCaution } from "../data/wind.js";

/**
 * Velocity pressure exposure coefficient in exposure B (towns, woods, closely spaced obstructions), by the formula of ASCE 7-05 to 7-16.
 *
 * @example
 * ```ts
 * exposureB({ height: "40 ft" }).coefficient.to().toFixed(2); // "0.76"
 * ```
 */
export const exposureB = /* @__PURE__ */ calculation({
  id: "fasteners.exposure-b",
  title: "Exposure coefficient, exposure B",
  given: {
    height: { is: "length", unit: ["ft", "m"], symbol: "h", says: "mean roof height of the building", above: 0, atMost: "60 ft" },
  },
  constants: {
    leastHeight: { is: "length", unit: ["ft", "m"], symbol: "h_min", value: "30 ft", says: "height below which the coefficient no longer falls, for cladding", basis: exposureBLeast },
    gradientHeight: { is: "length", unit: ["ft", "m"], symbol: "z_g", value: "1200 ft", says: "height at which the ground no longer slows the wind", basis: asce7 },
    scale: { is: "ratio", symbol: "c", value: "2.01", says: "scale of the profile", basis: asce7 },
  },
  steps: {
    countedHeight: { is: "length", unit: ["ft", "m"], symbol: "z", says: "height that is counted", formula: "max(height, leastHeight)", basis: exposureBLeast },
    coefficient: { is: "ratio", symbol: "K_z", says: "exposure coefficient", formula: "scale * (countedHeight / gradientHeight) ^ (2 / 7)", basis: asce7, differs: "the formula is taken to all its digits, where the table prints two decimals" },
  },
  cautions: [windCaution],
});
