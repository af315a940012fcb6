import { calculation } from "../core/calculation.js";
import { asce716Elevation, windCaution } from "../data/wind.js";

/**
 * Ground elevation factor of ASCE 7-16 by its US customary form.
 *
 * @example
 * ```ts
 * elevationFactorCustomary({ elevation: "1000 ft" }).elevationFactor.to().toFixed(4); // "0.9644"
 * ```
 */
export const elevationFactorCustomary = /* @__PURE__ */ calculation({
  id: "fasteners.elevation-factor-customary",
  title: "Ground elevation factor, US customary form",
  given: {
    elevation: { is: "length", unit: ["ft", "m"], symbol: "z_e", says: "elevation of the ground above sea level", atLeast: "-1500 ft", atMost: "20000 ft" },
  },
  constants: {
    thinning: { is: "ratio", symbol: "c", value: "0.0000362", says: "share of the air lost with each foot", basis: asce716Elevation },
    oneFoot: { is: "length", unit: "ft", symbol: "ft", value: "1 ft", says: "the foot in which the form is written", basis: asce716Elevation },
  },
  steps: {
    elevationFactor: { is: "ratio", symbol: "K_e", says: "ground elevation factor", formula: "exp(-thinning * elevation / oneFoot)", basis: asce716Elevation },
  },
  cautions: [windCaution],
});
