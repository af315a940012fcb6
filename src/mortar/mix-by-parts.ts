import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Cement, lime and sand for a volume of site-mixed mortar, from their parts by bulk volume. The bulking factor says how
 * much loose, dry volume goes into one volume of mortar.
 *
 * @example
 * ```ts
 * const mix = mixByParts({
 *   volume: "1 yd3", cementPart: 1, limePart: 0, sandPart: 3, bulkingFactor: "38/27",
 *   cementDensity: "94 lb/ft3", limeDensity: "40 lb/ft3", sandDensity: "80 lb/ft3", cementBag: "94 lb", limeBag: "50 lb",
 * });
 * mix.cement.toString(); // "9.5 ft3"
 * mix.sand.toString(); // "28.5 ft3"
 * mix.cementBags.toString(); // "10"
 * ```
 */
export const mixByParts = /* @__PURE__ */ calculation({
  id: "mortar.mix-by-parts",
  title: "Site-mixed mortar by parts",
  given: {
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar wanted, with waste", above: 0 },
    cementPart: { is: "ratio", symbol: "c", says: "parts of cement by bulk volume", atLeast: 0 },
    limePart: { is: "ratio", symbol: "l", says: "parts of hydrated lime by bulk volume", atLeast: 0 },
    sandPart: { is: "ratio", symbol: "s", says: "parts of damp, loose sand by bulk volume", above: 0 },
    bulkingFactor: { is: "ratio", symbol: "f", says: "bulk volume of cement, lime and sand to one volume of mortar", atLeast: 1, atMost: 2 },
    cementDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_c", says: "bulk density of the cement", above: 0 },
    limeDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_l", says: "bulk density of the lime", above: 0 },
    sandDensity: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "r_s", says: "dry mass in a volume of damp, loose sand", above: 0 },
    cementBag: { is: "mass", unit: ["lb", "kg"], symbol: "b_c", says: "cement in a bag", above: 0 },
    limeBag: { is: "mass", unit: ["lb", "kg"], symbol: "b_l", says: "lime in a bag", above: 0 },
  },
  steps: {
    binder: { is: "ratio", symbol: "p_b", says: "parts of cement and lime", formula: "cementPart + limePart", basis: arithmetic, above: 0 },
    sandRatio: { is: "ratio", symbol: "q", says: "sand to cement and lime, by bulk volume", formula: "sandPart / binder", basis: arithmetic },
    dry: { is: "volume", unit: ["ft3", "L"], symbol: "V_d", says: "bulk volume of all parts", formula: "volume * bulkingFactor", basis: arithmetic },
    onePart: { is: "volume", unit: ["ft3", "L"], symbol: "V_1", says: "bulk volume of one part", formula: "dry / (binder + sandPart)", basis: arithmetic },
    cement: { is: "volume", unit: ["ft3", "L"], symbol: "V_c", says: "bulk volume of cement", formula: "cementPart * onePart", basis: arithmetic },
    lime: { is: "volume", unit: ["ft3", "L"], symbol: "V_l", says: "bulk volume of lime", formula: "limePart * onePart", basis: arithmetic },
    sand: { is: "volume", unit: ["ft3", "L"], symbol: "V_s", says: "bulk volume of damp, loose sand", formula: "sandPart * onePart", basis: arithmetic },
    cementMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_c", formula: "cement * cementDensity", basis: arithmetic },
    limeMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_l", formula: "lime * limeDensity", basis: arithmetic },
    sandMass: { is: "mass", unit: ["lb", "kg"], symbol: "m_s", says: "mass of the sand, dry", formula: "sand * sandDensity", basis: arithmetic },
    cementBags: { is: "count", symbol: "n_c", says: "whole bags of cement to order", formula: "ceil(cementMass / cementBag)", basis: arithmetic },
    limeBags: { is: "count", symbol: "n_l", says: "whole bags of lime to order", formula: "ceil(limeMass / limeBag)", basis: arithmetic },
  },
  cautions: [
    "Measure the sand by the box, not by the shovel.",
    "The bulking factor is in dispute: tests gave 1.10 to 1.15 and 1.24 to 1.27; course notes teach 1.25 to 1.6.",
    "The sand that is hauled is wet and heavier than its dry mass.",
  ],
});
