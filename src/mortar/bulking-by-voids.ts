import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { pasteAndVoids } from "../data/mortar.js";

/**
 * Bulking factor of a mix of cement and sand from the voids in the sand: paste that fills the voids adds nothing to the
 * sand, and what is left over does.
 *
 * @example
 * ```ts
 * const mix = bulkingByVoids({ cementVolume: "1 ft3", pasteVolume: "1 ft3", sandPart: 3, voids: "45 %" });
 * mix.mortar.toString(); // "3.3 ft3"
 * mix.bulkingFactor.to().toFixed(3); // "1.212"
 * ```
 */
export const bulkingByVoids = /* @__PURE__ */ calculation({
  id: "mortar.bulking-by-voids",
  title: "Bulking factor from the voids in the sand",
  given: {
    cementVolume: { is: "volume", unit: ["ft3", "L"], symbol: "s", says: "bulk volume of the cement in a bag or barrel", above: 0 },
    pasteVolume: { is: "volume", unit: ["ft3", "L"], symbol: "p", says: "paste that this cement gives with its water", above: 0 },
    sandPart: { is: "ratio", symbol: "n", says: "parts of sand to one of cement, by bulk volume", above: 0 },
    voids: { is: "ratio", unit: "%", symbol: "v", says: "voids in the sand", above: 0, below: 1 },
  },
  constants: {
    swell: { is: "ratio", symbol: "k", value: "1.1", says: "volume of the sand once it is wet in the mortar, to its volume before", basis: pasteAndVoids },
    voidsLeft: { is: "ratio", symbol: "j", value: "0.9", says: "voids in the sand once it is wet in the mortar, to its voids before", basis: pasteAndVoids },
  },
  steps: {
    sand: { is: "volume", unit: ["ft3", "L"], symbol: "V_s", says: "sand to this cement, by bulk volume", formula: "sandPart * cementVolume", basis: arithmetic },
    rich: { is: "volume", unit: ["ft3", "L"], symbol: "V_r", says: "mortar where the paste more than fills the voids", formula: "pasteVolume + sand * (swell - voidsLeft * voids)", basis: pasteAndVoids },
    lean: { is: "volume", unit: ["ft3", "L"], symbol: "V_l", says: "mortar where it does not", formula: "swell * sand", basis: pasteAndVoids },
    mortar: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar from this cement and its sand", formula: "max(rich, lean)", basis: pasteAndVoids },
    bulkingFactor: { is: "ratio", symbol: "f", says: "bulk volume of cement and sand to one volume of mortar", formula: "(cementVolume + sand) / mortar", basis: arithmetic },
  },
});
