import { composed } from "../core/composed.js";
import { steelDesignations } from "../data/fasteners.js";
import { designThicknessOf } from "./design-thickness.js";
import { pullOutSince2022 } from "./pull-out-since-2022.js";
import { pullOutTo2016 } from "./pull-out-to-2016.js";
import { factorsOf } from "./screw-factors.js";

/**
 * Nominal pull-out of a screw from a steel stud by the edition named, with the factors of that edition.
 *
 * @example
 * ```ts
 * const stud = pullOut({ steel: "43 mil", screwDiameter: "0.19 in", ultimateStress: "45 ksi", edition: "AISI S100-16 w/S3-22" });
 * stud.nominal.to("lbf").toFixed(0); // "306"
 * stud.safetyFactor.toString(); // "2.8"
 * ```
 */
export const pullOut = /* @__PURE__ */ composed({
  id: "fasteners.pull-out",
  title: "Nominal pull-out of a screw from steel",
  given: {
    steel: { oneOf: steelDesignations, says: "steel the screw bites in, by its mils; no gauge, since 20 gauge may be 30 mil, 33 mil or less", either: "thickness" },
    designThickness: { is: "length", unit: ["in", "mm"], symbol: "t_c", says: "design thickness of that steel, where its mils are not in the table", above: 0, either: "thickness" },
    screwDiameter: { is: "length", unit: ["in", "mm"], symbol: "d", says: "nominal diameter of the screw", above: 0 },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u2", says: "ultimate stress of the steel", above: 0 },
    edition: { oneOf: ["AISI S100-07 to S100-16", "AISI S100-16 w/S3-22"], says: "edition of the specification; no other is on file" },
  },
  run: ({ steel, designThickness, screwDiameter, ultimateStress, edition }, work) => {
    const thickness = designThicknessOf(work, steel, designThickness);
    const strength = edition === "AISI S100-16 w/S3-22" ? pullOutSince2022 : pullOutTo2016;
    const { nominal } = work.part(strength, { thickness, screwDiameter, ultimateStress }).answers;
    return { nominal, ...factorsOf(work, edition, "pullOut") };
  },
});
