import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";
import { weightCaution } from "../data/limits.js";

/**
 * Weight that falls to one stud, to the length of the stud.
 *
 * @example
 * ```ts
 * weightOnStud({ weight: "30 psf", studSpacing: "16 in" }).onStud.toString(); // "40 lb/ft"
 * ```
 */
export const weightOnStud = /* @__PURE__ */ calculation({
  id: "limits.weight-on-stud",
  title: "Weight on one stud",
  given: {
    weight: { is: "arealMass", unit: ["lb/ft2", "kg/m2"], symbol: "W", says: "weight per area of face", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "s", says: "spacing of the studs, centre to centre", above: 0 },
  },
  steps: {
    onStud: { is: "linearMass", unit: ["lb/ft", "kg/m"], symbol: "W_s", says: "weight to the length of one stud", formula: "weight * studSpacing", basis: geometry },
  },
  cautions: [weightCaution],
});
