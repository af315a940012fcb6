import { calculation } from "../core/calculation.js";
import { s100Supplement3, s100To2016, screwStrengthCaution } from "../data/fasteners.js";

/**
 * Nominal pull-out of a screw from steel by AISI S100-16 with Supplement 3 of 2022, which lowers it in thin steel.
 *
 * @example
 * ```ts
 * pullOutSince2022({ thickness: "0.0451 in", screwDiameter: "0.19 in", ultimateStress: "45 ksi" }).nominal.to("lbf").toFixed(0); // "306"
 * ```
 */
export const pullOutSince2022 = /* @__PURE__ */ calculation({
  id: "fasteners.pull-out-since-2022",
  title: "Nominal pull-out by AISI S100-16 w/S3-22",
  given: {
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t_c", says: "design thickness of the steel that the screw goes right through", above: 0 },
    screwDiameter: { is: "length", unit: ["in", "mm"], symbol: "d", says: "nominal diameter of the screw", above: 0 },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u2", says: "ultimate stress of that steel", above: 0 },
  },
  constants: {
    pullOutShare: { is: "ratio", symbol: "c", value: "0.85", says: "coefficient of pull-out", basis: s100To2016 },
    thicknessShare: { is: "ratio", symbol: "c_t", value: "1.63", says: "coefficient of the thickness factor", basis: s100Supplement3 },
    oneInch: { is: "length", unit: "in", symbol: "in", value: "1 in", says: "the inch in which the factor is written", basis: s100Supplement3 },
  },
  steps: {
    thicknessFactor: { is: "ratio", symbol: "k_t", says: "factor for the thickness of the steel", formula: "thicknessShare * (thickness / oneInch) ^ 0.18", basis: s100Supplement3 },
    nominal: { is: "force", unit: ["lbf", "N"], symbol: "P_not", says: "nominal pull-out of one screw", formula: "pullOutShare * thickness * screwDiameter * ultimateStress * thicknessFactor", basis: s100Supplement3 },
  },
  cautions: [screwStrengthCaution],
});
