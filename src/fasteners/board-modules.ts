import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * How many stud spacings a board spans, how far its edge lies past the last stud, and the width it could be cut to.
 *
 * @example
 * ```ts
 * const wide = boardModules({ acrossStuds: "36 in", studSpacing: "16 in" });
 * wide.pastStud.toString(); // "4 in"
 * wide.cutTo.toString(); // "32 in"
 * ```
 */
export const boardModules = /* @__PURE__ */ calculation({
  id: "fasteners.board-modules",
  title: "Stud spacings in the width of a board",
  given: {
    acrossStuds: { is: "length", unit: ["in", "mm"], symbol: "W", says: "board dimension across the studs", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
  },
  steps: {
    modules: { is: "ratio", symbol: "m", says: "stud spacings in the width of the board", formula: "acrossStuds / studSpacing", basis: geometry },
    wholeModules: { is: "count", symbol: "m_w", says: "whole stud spacings in the width of the board", formula: "floor(modules)", basis: arithmetic },
    cutTo: { is: "length", unit: ["in", "mm"], symbol: "W_c", says: "width of whole stud spacings; nought where the board is narrower than one", formula: "wholeModules * studSpacing", basis: geometry },
    pastStud: { is: "length", unit: ["in", "mm"], symbol: "p", says: "edge of the board past the last stud it reaches", formula: "acrossStuds - cutTo", basis: geometry },
  },
});
