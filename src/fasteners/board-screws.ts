import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { usualEdgeDistance } from "../data/fasteners.js";

/**
 * Screws in one board, one line a stud and one at each edge. The spaces are rounded up, so that none is wider than the
 * spacing asked for.
 *
 * @example
 * ```ts
 * const upright = boardScrews({ acrossStuds: "4 ft", alongStuds: "8 ft", studSpacing: "16 in", screwSpacing: "8 in" });
 * upright.screws.toString(); // "52"
 * upright.actualSpacing.toString(); // "7.9375 in"
 * ```
 */
export const boardScrews = /* @__PURE__ */ calculation({
  id: "fasteners.board-screws",
  title: "Screws in one board",
  given: {
    acrossStuds: { is: "length", unit: ["in", "mm"], symbol: "W", says: "board dimension across the studs", above: 0 },
    alongStuds: { is: "length", unit: ["in", "mm"], symbol: "H", says: "board dimension along the studs", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    screwSpacing: { is: "length", unit: ["in", "mm"], symbol: "s", says: "greatest spacing of screws along a stud", above: 0 },
    edgeDistance: { is: "length", unit: ["in", "mm"], symbol: "e", says: "distance of the first and last screw of a line from the end of the board", above: 0, default: "3/8 in", basis: usualEdgeDistance },
  },
  steps: {
    run: { is: "length", unit: ["in", "mm"], symbol: "r", says: "from the first screw of a line to the last", formula: "alongStuds - 2 * edgeDistance", basis: geometry, above: 0 },
    spaces: { is: "count", symbol: "k", says: "spaces between the screws of a line", formula: "ceil(run / screwSpacing)", basis: arithmetic },
    screwsPerLine: { is: "count", symbol: "n", formula: "spaces + 1", basis: arithmetic },
    actualSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_a", says: "spacing of screws with the line divided evenly", formula: "run / spaces", basis: arithmetic },
    lines: { is: "count", symbol: "m", says: "lines of screws, both edges of the board among them", formula: "ceil(acrossStuds / studSpacing) + 1", basis: geometry },
    screws: { is: "count", symbol: "N", says: "screws in one board", formula: "lines * screwsPerLine", basis: arithmetic },
  },
  cautions: [
    "A line is counted at each edge of the board; an edge that meets no stud needs backing: see fasteners.board-edges-on-studs.",
    "Where two boards meet on a stud, each has its own line of screws.",
  ],
});
