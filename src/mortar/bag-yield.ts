import { calculation } from "../core/calculation.js";
import { massKept, waterWeight } from "../data/mortar.js";

/**
 * Mortar that one bag gives, from its dry mass, its water and the density of the wet mortar.
 *
 * @example
 * ```ts
 * bagYield({ dryMass: "25 kg", water: "5 L", wetDensity: "1.6 kg/L" }).bagYield.toString(); // "18.75 L"
 * ```
 */
export const bagYield = /* @__PURE__ */ calculation({
  id: "mortar.bag-yield",
  title: "Yield of a bag by density",
  given: {
    dryMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "dry mix in a full bag", above: 0 },
    water: { is: "volume", unit: ["qt", "L"], symbol: "W", says: "water mixed with a full bag", above: 0 },
    wetDensity: { is: "density", unit: ["lb/ft3", "kg/L"], symbol: "r", says: "density of the wet mortar, weighed in a measure or from the data sheet", above: 0 },
  },
  constants: {
    waterDensity: { is: "density", unit: ["lb/gal", "kg/L"], symbol: "r_w", says: "mass of water per volume", value: "1 kg/L", basis: waterWeight },
  },
  steps: {
    wetMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_w", says: "mass of the wet mortar", formula: "dryMass + water * waterDensity", basis: massKept },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar from one bag", formula: "wetMass / wetDensity", basis: massKept },
  },
});
