import { calculation } from "../core/calculation.js";
import { absoluteVolumes, waterWeight } from "../data/mortar.js";

/**
 * Absolute volume of one part of a mix: what it fills without the voids between its grains.
 *
 * @example
 * ```ts
 * partVolume({ mass: "265 kg", relativeDensity: 2.65 }).volume.to("L").toString(); // "100"
 * ```
 */
export const partVolume = /* @__PURE__ */ calculation({
  id: "mortar.part-volume",
  title: "Absolute volume of one part of a mix",
  given: {
    mass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "mass of the part", above: 0 },
    relativeDensity: { is: "ratio", symbol: "G", says: "density of the part to that of water", above: 0, atMost: 12 },
  },
  constants: {
    waterDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_w", says: "mass of water per volume", value: "1 kg/L", basis: waterWeight },
  },
  steps: {
    volume: {
      is: "volume",
      unit: ["ft3", "L"],
      symbol: "V",
      says: "volume of the solid grains",
      formula: "mass / (relativeDensity * waterDensity)",
      basis: absoluteVolumes,
      differs: "the source takes water at 62.4 lb/ft3; 1 kg/L is 62.43",
    },
  },
});
