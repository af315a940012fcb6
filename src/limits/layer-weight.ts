import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { weightCaution } from "../data/limits.js";

/**
 * Weight of one layer of a wall to the area of its face, dry and with the water it takes up, from its thickness and density.
 *
 * @example
 * ```ts
 * const stone = layerWeight({ thickness: "1-1/4 in", density: "150 lb/ft3", wetGain: "4 %" });
 * stone.dry.toString(); // "15.625 lb/ft2"
 * stone.wet.toString(); // "16.25 lb/ft2"
 * ```
 */
export const layerWeight = /* @__PURE__ */ calculation({
  id: "limits.layer-weight",
  title: "Weight of a layer by thickness and density",
  given: {
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "mean thickness of the layer", above: 0 },
    density: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "g", says: "density of the layer, dry", above: 0 },
    wetGain: { is: "ratio", unit: "%", symbol: "w", says: "water taken up, as a share of the dry weight", atLeast: 0 },
  },
  steps: {
    dry: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W_d", says: "weight per area of face, dry", formula: "thickness * density", basis: geometry },
    wet: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W_w", says: "weight per area of face, wet", formula: "dry * (1 + wetGain)", basis: arithmetic },
  },
  cautions: [weightCaution],
});
