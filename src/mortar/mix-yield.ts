import { calculation } from "../core/calculation.js";
import { absoluteVolumes } from "../data/mortar.js";

/**
 * Yield and density of a mix from the absolute volume of its parts and the air in it.
 *
 * @example
 * ```ts
 * const mix = mixYield({ partsVolume: "90 L", partsMass: "180 kg", air: "10 %" });
 * mix.volume.toString(); // "100 L"
 * mix.density.toString(); // "1.8 kg/L"
 * ```
 */
export const mixYield = /* @__PURE__ */ calculation({
  id: "mortar.mix-yield",
  title: "Yield and density of a mix by absolute volume",
  given: {
    partsVolume: { is: "volume", unit: ["ft3", "L"], symbol: "V_s", says: "absolute volume of all parts and the water", above: 0 },
    partsMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "mass of all parts and the water", above: 0 },
    air: { is: "ratio", unit: "%", symbol: "a", says: "air in the mortar, by its volume", atLeast: 0, below: "50 %" },
  },
  steps: {
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar that the mix gives", formula: "partsVolume / (1 - air)", basis: absoluteVolumes },
    density: { is: "density", unit: ["lb/ft3", "kg/L"], symbol: "r", says: "density of the mortar", formula: "partsMass / volume", basis: absoluteVolumes },
  },
});
