import { calculation } from "../core/calculation.js";
import { standardGravity } from "../data/limits.js";

/**
 * Load of a mass to the area: what codes write in kN/m2, or in psf.
 *
 * @example
 * ```ts
 * loadOfWeight({ weight: "15 psf" }).load.toString(); // "15 psf"
 * loadOfWeight({ weight: "30 kg/m2" }).load.toString(); // "0.2941995 kPa"
 * ```
 */
export const loadOfWeight = /* @__PURE__ */ calculation({
  id: "limits.load-of-weight",
  title: "Load of a weight per area",
  given: {
    weight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W", says: "weight per area of face", above: 0 },
  },
  constants: {
    fall: { is: "speed", unit: "m/s", symbol: "v_1", value: "9.80665 m/s", says: "speed gained in each second of free fall", basis: standardGravity },
    second: { is: "time", unit: "s", symbol: "s_1", value: "1 s", says: "one second", basis: standardGravity },
  },
  steps: {
    load: { is: "pressure", unit: ["psf", "kPa"], symbol: "q", says: "load per area of face", formula: "weight * fall / second", basis: standardGravity },
  },
});
