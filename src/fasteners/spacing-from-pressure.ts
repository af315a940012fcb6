import { calculation } from "../core/calculation.js";
import { arithmetic, statics } from "../data/basis.js";
import { screwStrengthCaution, usualScrewSpacing } from "../data/fasteners.js";

/**
 * Greatest spacing of screws along a stud under a wind pressure, by everything that may give way, and rounded down to
 * the half inch. The pressure and all loads are at allowable level.
 *
 * @example
 * ```ts
 * const line = spacingFromPressure({ pressure: "30 psf", studSpacing: "16 in", allowablePullOut: "72 lbf", allowableBoardPullThrough: "25 lbf", allowableScrewTension: "190 lbf" });
 * line.exactSpacing.toString(); // "7.5 in"
 * line.load.toString(); // "25 lbf"
 * ```
 */
export const spacingFromPressure = /* @__PURE__ */ calculation({
  id: "fasteners.spacing-from-pressure",
  title: "Screw spacing along a stud from a wind pressure",
  given: {
    pressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p", says: "wind pressure on the wall, at allowable level and without sign", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    allowablePullOut: { is: "force", unit: ["lbf", "N"], symbol: "P_o", says: "allowable pull-out of one screw from the stud", above: 0 },
    allowableBoardPullThrough: { is: "force", unit: ["lbf", "N"], symbol: "P_b", says: "allowable pull-through of the board at one screw: a test value divided by its safety factor", above: 0 },
    allowableScrewTension: { is: "force", unit: ["lbf", "N"], symbol: "P_t", says: "allowable tension of the screw itself", above: 0 },
    greatestSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_max", says: "greatest spacing by practice, the code or the board's instructions", above: 0, default: "8 in", basis: usualScrewSpacing },
  },
  constants: {
    halfInch: { is: "length", unit: ["in", "mm"], symbol: "s_0", value: "1/2 in", says: "step to which spacings are rounded down", basis: usualScrewSpacing },
  },
  steps: {
    lineLoad: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "w", says: "load on one stud", formula: "pressure * studSpacing", basis: statics },
    pullOut: { is: "length", unit: ["in", "mm"], symbol: "s_o", says: "spacing by pull-out from the stud", formula: "allowablePullOut / lineLoad", basis: statics },
    boardPullThrough: { is: "length", unit: ["in", "mm"], symbol: "s_b", says: "spacing by pull-through of the board", formula: "allowableBoardPullThrough / lineLoad", basis: statics },
    screwTension: { is: "length", unit: ["in", "mm"], symbol: "s_t", says: "spacing by tension of the screw", formula: "allowableScrewTension / lineLoad", basis: statics },
    exactSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_e", says: "the least of these and of the greatest spacing", formula: "min(pullOut, boardPullThrough, screwTension, greatestSpacing)", basis: arithmetic },
    spacing: { is: "length", unit: ["in", "mm"], symbol: "s", says: "spacing rounded down to the half inch", formula: "floor(exactSpacing / halfInch) * halfInch", basis: arithmetic, above: 0 },
    load: { is: "force", unit: ["lbf", "N"], symbol: "P", says: "load on one screw at this spacing", formula: "lineLoad * spacing", basis: statics },
  },
  cautions: [
    screwStrengthCaution,
    "Each stud is taken to carry its own half bays; a board over three or more studs loads the first stud in from its edge by up to a quarter more.",
    "8 in is trade practice; code tables for gypsum sheathing say 7 in. The tighter of what applies holds.",
  ],
});
