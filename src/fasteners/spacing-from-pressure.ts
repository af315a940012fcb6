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
  title: "Screw spacing along a stud by wind pressure",
  given: {
    pressure: { is: "pressure", unit: ["psf", "Pa"], symbol: "p", says: "wind pressure at allowable level", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs", above: 0 },
    allowablePullOut: { is: "force", unit: ["lbf", "N"], symbol: "P_o", says: "allowable pull-out of one screw", above: 0 },
    allowableBoardPullThrough: { is: "force", unit: ["lbf", "N"], symbol: "P_b", says: "allowable pull-through: a test value over its factor", above: 0 },
    allowableScrewTension: { is: "force", unit: ["lbf", "N"], symbol: "P_t", says: "allowable tension of one screw", above: 0 },
    greatestSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_max", says: "greatest spacing by practice or instructions", above: 0, default: "8 in", basis: usualScrewSpacing },
  },
  constants: {
    halfInch: { is: "length", unit: ["in", "mm"], symbol: "s_0", value: "1/2 in", says: "step of the spacing", basis: usualScrewSpacing },
  },
  steps: {
    lineLoad: { is: "lineLoad", unit: ["lbf/ft", "N/m"], symbol: "w", says: "load on a stud", formula: "pressure * studSpacing", basis: statics },
    pullOut: { is: "length", unit: ["in", "mm"], symbol: "s_o", formula: "allowablePullOut / lineLoad", basis: statics },
    boardPullThrough: { is: "length", unit: ["in", "mm"], symbol: "s_b", formula: "allowableBoardPullThrough / lineLoad", basis: statics },
    screwTension: { is: "length", unit: ["in", "mm"], symbol: "s_t", formula: "allowableScrewTension / lineLoad", basis: statics },
    exactSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_e", formula: "min(pullOut, boardPullThrough, screwTension, greatestSpacing)", basis: arithmetic },
    spacing: { is: "length", unit: ["in", "mm"], symbol: "s", formula: "floor(exactSpacing / halfInch) * halfInch", basis: arithmetic, above: 0 },
    load: { is: "force", unit: ["lbf", "N"], symbol: "P", formula: "lineLoad * spacing", basis: statics },
  },
  cautions: [
    screwStrengthCaution,
    "The first stud in from a board's edge takes up to a quarter more.",
    "Code tables for gypsum sheathing say 7 in; the tighter holds.",
  ],
});
