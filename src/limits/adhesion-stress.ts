import { calculation } from "../core/calculation.js";
import { limitCaution } from "../data/limits.js";
import { statics } from "../data/basis.js";

/**
 * Mean stress on the face that was tested, from the load at which it broke.
 *
 * @example
 * ```ts
 * adhesionStress({ load: "628 lbf", area: "4 in2" }).stress.toString(); // "157 psi"
 * ```
 */
export const adhesionStress = /* @__PURE__ */ calculation({
  id: "limits.adhesion-stress",
  title: "Stress of an adhesion test",
  given: {
    load: { is: "force", unit: ["lbf", "kN"], symbol: "P", says: "load at which it broke", above: 0 },
    area: { is: "area", unit: ["in2", "mm2"], symbol: "A", says: "area that was loaded, as cut or as glued", above: 0 },
  },
  steps: {
    stress: { is: "pressure", unit: ["psi", "MPa"], symbol: "f", says: "mean stress over the area", formula: "load / area", basis: statics },
  },
  cautions: [limitCaution],
});
