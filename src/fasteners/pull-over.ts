import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { pullOverResearch, steelDesignations } from "../data/fasteners.js";
import { designThicknessOf } from "./design-thickness.js";
import { pullOverSince2022 } from "./pull-over-since-2022.js";
import { pullOverTo2016 } from "./pull-over-to-2016.js";
import { factorsOf } from "./screw-factors.js";
import { refuseBoard } from "./steel-under-head.js";

/**
 * Nominal pull-over of steel over the head of a screw by the edition named, with the factors of that edition. Sources
 * disagree on the coefficient since 2022; both are offered by name. A board under the head is refused.
 *
 * @example
 * ```ts
 * const strap = pullOver({ underHead: "steel", steel: "54 mil", headDiameter: "0.4 in", ultimateStress: "65 ksi", edition: "AISI S100-16 w/S3-22, coefficient 0.90" });
 * strap.nominal.toString(); // "1324.44 lbf"
 * ```
 */
export const pullOver = /* @__PURE__ */ composed({
  id: "fasteners.pull-over",
  title: "Nominal pull-over of steel over a screw head",
  given: {
    underHead: { oneOf: ["steel", "board"], says: "what lies under the head of the screw" },
    steel: { oneOf: steelDesignations, says: "steel under the head, by its mils; no gauge, since 20 gauge may be 30 mil, 33 mil or less", either: "thickness" },
    designThickness: { is: "length", unit: ["in", "mm"], symbol: "t_1", says: "design thickness of that steel, where its mils are not in the table", above: 0, either: "thickness" },
    headDiameter: { is: "length", unit: ["in", "mm"], symbol: "d_w", says: "diameter of the head, or of a washer made in one with it", above: 0 },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u1", says: "ultimate stress of the steel", above: 0 },
    edition: {
      oneOf: ["AISI S100-07 to S100-16", "AISI S100-16 w/S3-22, coefficient 0.90", "AISI S100-16 w/S3-22, coefficient 1.5"],
      says: "edition of the specification, with the coefficient where sources disagree; no other is on file",
    },
  },
  run: ({ underHead, steel, designThickness, headDiameter, ultimateStress, edition }, work) => {
    refuseBoard(work, underHead);
    const thickness = designThicknessOf(work, steel, designThickness);
    const lowered = edition === "AISI S100-16 w/S3-22, coefficient 0.90";
    const { nominal } = work.part(lowered ? pullOverSince2022 : pullOverTo2016, { thickness, headDiameter, ultimateStress }).answers;
    if (edition !== "AISI S100-07 to S100-16") {
      work.stand(pullOverResearch);
      work.caution(
        "Sources disagree on pull-over since 2022: a coding of S100-16 w/S3-22 has 0.90 with a safety factor of 2.90; the abstract of AISI RP19-1 says that the equation of S100-16, which has 1.5, need not change, and its factor of 3.00 is kept with it here. 0.90 gives the lesser strength; read the specification.",
      );
    }
    if (compare(headDiameter, quantity("length", "5/16 in")) < 0) work.caution("The head is under 5/16 in, the least diameter for which the specification gives screws in tension.");
    return { nominal, ...factorsOf(work, lowered ? "AISI S100-16 w/S3-22" : "AISI S100-07 to S100-16", "pullOver") };
  },
});
