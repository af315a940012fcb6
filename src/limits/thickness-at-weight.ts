import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";
import { weightCaution } from "../data/limits.js";

/**
 * Thickness at which a material alone reaches a weight to the area of its face.
 *
 * @example
 * ```ts
 * thicknessAtWeight({ weight: "15 psf", density: "160 lb/ft3" }).thickness.toString(); // "1.125 in"
 * ```
 */
export const thicknessAtWeight = /* @__PURE__ */ calculation({
  id: "limits.thickness-at-weight",
  title: "Thickness at a weight",
  given: {
    weight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W", says: "weight per area of face that is not to be passed", above: 0 },
    density: { is: "density", unit: ["lb/ft3", "kg/m3"], symbol: "g", says: "density of the material as it will be weighed", above: 0 },
  },
  steps: {
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "mean thickness at that weight", formula: "weight / density", basis: geometry },
  },
  cautions: [weightCaution],
});
