import { calculation } from "../core/calculation.js";
import { s100To2016, screwStrengthCaution } from "../data/fasteners.js";

/**
 * Nominal pull-out of a screw from steel by AISI S100-07 to S100-16.
 *
 * @example
 * ```ts
 * pullOutTo2016({ thickness: "0.0451 in", screwDiameter: "0.19 in", ultimateStress: "45 ksi" }).nominal.toString(); // "327.76425 lbf"
 * ```
 */
export const pullOutTo2016 = /* @__PURE__ */ calculation({
  id: "fasteners.pull-out-to-2016",
  title: "Nominal pull-out by AISI S100-07 to S100-16",
  given: {
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t_c", says: "design thickness of the steel that the screw goes right through", above: 0 },
    screwDiameter: { is: "length", unit: ["in", "mm"], symbol: "d", says: "nominal diameter of the screw", above: 0 },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u2", says: "ultimate stress of that steel", above: 0 },
  },
  constants: {
    pullOutShare: { is: "ratio", symbol: "c", value: "0.85", says: "coefficient of pull-out", basis: s100To2016 },
  },
  steps: {
    nominal: { is: "force", unit: ["lbf", "N"], symbol: "P_not", says: "nominal pull-out of one screw", formula: "pullOutShare * thickness * screwDiameter * ultimateStress", basis: s100To2016 },
  },
  cautions: [screwStrengthCaution],
});
