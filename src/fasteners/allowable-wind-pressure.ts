import { calculation } from "../core/calculation.js";
import { allowableWindShare, windCaution } from "../data/wind.js";

/**
 * Wind pressure at allowable level from one at strength level, by ASCE 7-10 and 7-16.
 *
 * @example
 * ```ts
 * allowableWindPressure({ strengthPressure: "32 psf" }).pressure.toString(); // "19.2 psf"
 * ```
 */
export const allowableWindPressure = /* @__PURE__ */ calculation({
  id: "fasteners.allowable-wind-pressure",
  title: "Wind pressure at allowable level",
  given: {
    strengthPressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p_s", says: "pressure at strength level, the least pressure applied", above: 0 },
  },
  constants: {
    windShare: { is: "ratio", symbol: "c", value: "0.6", says: "share of the wind at strength level", basis: allowableWindShare },
  },
  steps: {
    pressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p", says: "pressure at allowable level", formula: "windShare * strengthPressure", basis: allowableWindShare },
  },
  cautions: [windCaution],
});
