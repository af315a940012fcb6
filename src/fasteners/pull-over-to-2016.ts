import { calculation } from "../core/calculation.js";
import { s100To2016, screwStrengthCaution } from "../data/fasteners.js";

/**
 * Nominal pull-over of a sheet of steel over the head of a screw by AISI S100-07 to S100-16: coefficient 1.5.
 *
 * @example
 * ```ts
 * pullOverTo2016({ thickness: "0.0566 in", headDiameter: "0.4 in", ultimateStress: "65 ksi" }).nominal.toString(); // "2207.4 lbf"
 * ```
 */
export const pullOverTo2016 = /* @__PURE__ */ calculation({
  id: "fasteners.pull-over-to-2016",
  title: "Nominal pull-over by AISI S100-07 to S100-16",
  given: {
    thickness: { is: "length", unit: ["in", "mm"], symbol: "t_1", says: "design thickness of the steel under the head", above: 0 },
    headDiameter: { is: "length", unit: ["in", "mm"], symbol: "d_w", says: "diameter of the head, or of a washer made in one with it", above: 0 },
    ultimateStress: { is: "pressure", unit: ["ksi", "MPa"], symbol: "F_u1", says: "ultimate stress of that steel", above: 0 },
  },
  constants: {
    pullOverShare: { is: "ratio", symbol: "c", value: "1.5", says: "coefficient of pull-over", basis: s100To2016 },
    greatestHead: { is: "length", unit: ["in", "mm"], symbol: "d_max", value: "1/2 in", says: "greatest diameter that is counted", basis: s100To2016 },
  },
  steps: {
    countedHead: { is: "length", unit: ["in", "mm"], symbol: "d_w'", says: "diameter that is counted", formula: "min(headDiameter, greatestHead)", basis: s100To2016 },
    nominal: { is: "force", unit: ["lbf", "N"], symbol: "P_nov", says: "nominal pull-over of one screw", formula: "pullOverShare * thickness * countedHead * ultimateStress", basis: s100To2016 },
  },
  cautions: [screwStrengthCaution],
});
