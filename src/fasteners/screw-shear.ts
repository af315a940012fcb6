import { spaced } from "../core/spaced.js";
import { composed } from "../core/composed.js";
import { compare, isNought } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { steelDesignations } from "../data/fasteners.js";
import { designThicknessOf } from "./design-thickness.js";
import { factorsOf } from "./screw-factors.js";
import { screwShearInSteel } from "./screw-shear-in-steel.js";
import { refuseBoard } from "./steel-under-head.js";

/**
 * Nominal shear of a screw that joins two plies of steel, by tilting and bearing, with the factors of the edition
 * named and what governs. A board under the head is refused.
 *
 * @example
 * ```ts
 * const lap = screwShear({ underHead: "steel", steelUnderHead: "54 mil", ultimateStressUnderHead: "65 ksi", steel: "43 mil", ultimateStress: "45 ksi", screwDiameter: "0.19 in", edition: "AISI S100-07 to S100-16" });
 * lap.nominal.to("lbf").toFixed(0); // "789"
 * lap.governs; // ["tilting"]
 * ```
 */
export const screwShear = /* @__PURE__ */ composed({
  id: "fasteners.screw-shear",
  title: "Nominal shear of a screw in steel",
  given: {
    underHead: { oneOf: ["steel", "board"], says: "what lies under the head of the screw" },
    steelUnderHead: { oneOf: steelDesignations, says: "steel under the head, by its mils; no gauge, since 20 gauge may be 30 mil, 33 mil or less", either: "thicknessUnderHead" },
    designThicknessUnderHead: { is: "length", unit: ["in", "mm"], symbol: "t_1", says: "design thickness of the steel under the head, where its mils are not in the table", above: 0, either: "thicknessUnderHead" },
    ultimateStressUnderHead: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u1", says: "ultimate stress of the steel under the head", above: 0 },
    steel: { oneOf: steelDesignations, says: "steel away from the head, by its mils; no gauge, since 20 gauge may be 30 mil, 33 mil or less", either: "thickness" },
    designThickness: { is: "length", unit: ["in", "mm"], symbol: "t_2", says: "design thickness of the steel away from the head, where its mils are not in the table", above: 0, either: "thickness" },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u2", says: "ultimate stress of the steel away from the head", above: 0 },
    screwDiameter: { is: "length", unit: ["in", "mm"], symbol: "d", says: "nominal diameter of the screw", above: 0 },
    edition: { oneOf: ["AISI S100-07 to S100-16", "AISI S100-16 w/S3-22"], says: "edition of the specification; no other is on file" },
  },
  cautions: ["What the screw itself holds in shear is compared in fasteners.allowable-strength."],
  run: (given, work) => {
    const { underHead, ultimateStressUnderHead, ultimateStress, screwDiameter, edition } = given;
    refuseBoard(work, underHead);
    const thicknessUnderHead = designThicknessOf(work, given.steelUnderHead, given.designThicknessUnderHead);
    const thickness = designThicknessOf(work, given.steel, given.designThickness);
    const plies = { thicknessUnderHead, ultimateStressUnderHead, thickness, ultimateStress, screwDiameter };
    const { answers, steps } = work.part(screwShearInSteel, plies);
    const { nominal, wayBetween } = answers;
    const counts = { withTilting: compare(wayBetween, quantity("ratio", 1)) < 0, withoutTilting: !isNought(wayBetween) };
    const won = steps.flatMap(({ name, governedBy }) => (governedBy !== undefined && name in counts && counts[name as keyof typeof counts] ? [spaced(governedBy)] : []));
    return { nominal, governs: [...new Set(won)], ...factorsOf(work, edition, "tiltingAndBearing") };
  },
});
