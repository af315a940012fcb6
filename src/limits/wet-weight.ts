import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { weightCaution } from "../data/limits.js";

/**
 * Weight of one layer with the water it takes up, from its weight to the area of its face.
 *
 * @example
 * ```ts
 * wetWeight({ weight: "13 psf", wetGain: "10 %" }).wet.toString(); // "14.3 lb/ft2"
 * ```
 */
export const wetWeight = /* @__PURE__ */ calculation({
  id: "limits.wet-weight",
  title: "Wet weight of a layer",
  given: {
    weight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W_d", says: "weight per area of face, dry", above: 0 },
    wetGain: { is: "ratio", unit: "%", symbol: "w", says: "water taken up, as a share of the dry weight", atLeast: 0 },
  },
  steps: {
    wet: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W_w", says: "weight per area of face, wet", formula: "weight * (1 + wetGain)", basis: arithmetic },
  },
  cautions: [weightCaution],
});
