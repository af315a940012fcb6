import { composed } from "../core/composed.js";
import { elevationFactorCustomary } from "./elevation-factor-customary.js";
import { elevationFactorSi } from "./elevation-factor-si.js";

/**
 * Ground elevation factor of ASCE 7-16. Its two printed forms differ in the fourth decimal and beyond, so the form is
 * asked for.
 *
 * @example
 * ```ts
 * groundElevationFactor({ elevation: "1000 ft", form: "US customary" }).elevationFactor.to().toFixed(4); // "0.9644"
 * ```
 */
export const groundElevationFactor = /* @__PURE__ */ composed({
  id: "fasteners.ground-elevation-factor",
  title: "Ground elevation factor",
  given: {
    elevation: { is: "length", unit: ["ft", "m"], symbol: "z_e", says: "elevation of the ground above sea level", atLeast: "-1500 ft", atMost: "20000 ft" },
    form: { oneOf: ["US customary", "SI"], says: "form of the equation" },
  },
  run: ({ elevation, form }, work) => {
    const { elevationFactor } = work.part(form === "SI" ? elevationFactorSi : elevationFactorCustomary, { elevation }).answers;
    return { elevationFactor };
  },
});
