import { calculation } from "../core/calculation.js";
import { s100To2016, screwStrengthCaution } from "../data/fasteners.js";

/**
 * Nominal shear of a screw that joins two plies of steel, by tilting and bearing: the equations of AISI S100-07 to
 * S100-16, which Supplement 3 of 2022 leaves as they are.
 *
 * @example
 * ```ts
 * const lap = screwShearInSteel({ thicknessUnderHead: "0.0566 in", ultimateStressUnderHead: "65 ksi", thickness: "0.0451 in", ultimateStress: "45 ksi", screwDiameter: "0.19 in" });
 * lap.nominal.to("lbf").toFixed(0); // "789"
 * ```
 */
export const screwShearInSteel = /* @__PURE__ */ calculation({
  id: "fasteners.screw-shear-in-steel",
  title: "Nominal shear of a screw in steel",
  given: {
    thicknessUnderHead: { is: "length", unit: ["in", "mm"], symbol: "t_1", says: "design thickness under the head", above: 0 },
    ultimateStressUnderHead: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u1", says: "ultimate stress under the head", above: 0 },
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t_2", says: "design thickness of the other steel", above: 0 },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u2", says: "ultimate stress of the other steel", above: 0 },
    screwDiameter: { is: "length", unit: ["in", "mm"], symbol: "d", says: "diameter of the screw", above: 0 },
  },
  constants: {
    tiltingShare: { is: "ratio", symbol: "c_t", value: "4.2", says: "tilting coefficient", basis: s100To2016 },
    bearingShare: { is: "ratio", symbol: "c_b", value: "2.7", says: "bearing coefficient", basis: s100To2016 },
    tiltingEnds: { is: "ratio", symbol: "r_t", value: "2.5", says: "where tilting ends", basis: s100To2016 },
  },
  steps: {
    tilting: { is: "force", unit: ["lbf", "N"], symbol: "P_t", formula: "tiltingShare * sqrt(thickness ^ 3 * screwDiameter) * ultimateStress", basis: s100To2016 },
    bearingUnderHead: { is: "force", unit: ["lbf", "N"], symbol: "P_b1", formula: "bearingShare * thicknessUnderHead * screwDiameter * ultimateStressUnderHead", basis: s100To2016 },
    bearing: { is: "force", unit: ["lbf", "N"], symbol: "P_b2", formula: "bearingShare * thickness * screwDiameter * ultimateStress", basis: s100To2016 },
    withTilting: { is: "force", unit: ["lbf", "N"], symbol: "P_1", says: "the least of the three", formula: "min(tilting, bearingUnderHead, bearing)", basis: s100To2016 },
    withoutTilting: { is: "force", unit: ["lbf", "N"], symbol: "P_2", says: "the lesser bearing", formula: "min(bearingUnderHead, bearing)", basis: s100To2016 },
    wayBetween: { is: "ratio", symbol: "w", says: "way of the ratio there", formula: "(min(max(thickness / thicknessUnderHead, 1), tiltingEnds) - 1) / (tiltingEnds - 1)", basis: s100To2016 },
    nominal: { is: "force", unit: ["lbf", "N"], symbol: "P_nv", formula: "withTilting + wayBetween * (withoutTilting - withTilting)", basis: s100To2016 },
  },
  cautions: [screwStrengthCaution],
});
