import { calculation } from "../core/calculation.js";
import { standardAtmosphere } from "../data/weather.js";

/**
 * Pressure of the air at an altitude in the standard atmosphere, where there is no barometer.
 *
 * @example
 * ```ts
 * standardPressure({ altitude: "500 m" }).barometer.to("Pa").toFixed(0); // "95461"
 * ```
 */
export const standardPressure = /* @__PURE__ */ calculation({
  id: "weather.standard-pressure",
  title: "Pressure of the air at an altitude",
  given: {
    altitude: { is: "length", unit: ["ft", "m"], symbol: "z", says: "altitude above the sea", atLeast: "-1000 ft", atMost: "15000 ft" },
  },
  constants: {
    atSea: { is: "pressure", unit: ["inHg", "kPa"], symbol: "p_0", value: "101325 Pa", says: "pressure at the sea", basis: standardAtmosphere },
    lapse: { is: "ratio", symbol: "l", value: "0.0000225577", says: "fall of temperature a metre, against that at the sea", basis: standardAtmosphere },
    oneMetre: { is: "length", unit: "m", symbol: "m", value: "1 m", says: "the unit for which the equation is written", basis: standardAtmosphere },
  },
  steps: {
    barometer: { is: "pressure", unit: ["inHg", "kPa"], symbol: "p", says: "pressure of the air", formula: "atSea * (1 - lapse * altitude / oneMetre) ^ 5.2559", basis: standardAtmosphere },
  },
});
