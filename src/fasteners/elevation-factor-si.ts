import { calculation } from "../core/calculation.js";
import { asce716Elevation, windCaution } from "../data/wind.js";

/**
 * Ground elevation factor of ASCE 7-16 by its SI form.
 *
 * @example
 * ```ts
 * elevationFactorSi({ elevation: "110 m" }).elevationFactor.to().toFixed(4); // "0.9870"
 * ```
 */
export const elevationFactorSi = /* @__PURE__ */ calculation({
  id: "fasteners.elevation-factor-si",
  title: "Ground elevation factor, SI form",
  given: {
    elevation: { is: "length", unit: ["ft", "m"], symbol: "z_e", says: "elevation of the ground above sea level", atLeast: "-1500 ft", atMost: "20000 ft" },
  },
  constants: {
    thinning: { is: "ratio", symbol: "c", value: "0.000119", says: "share of the air lost with each metre", basis: asce716Elevation },
    oneMetre: { is: "length", unit: "m", symbol: "m", value: "1 m", says: "the metre in which the form is written", basis: asce716Elevation },
  },
  steps: {
    elevationFactor: { is: "ratio", symbol: "K_e", says: "ground elevation factor", formula: "exp(-thinning * elevation / oneMetre)", basis: asce716Elevation },
  },
  cautions: [windCaution],
});
