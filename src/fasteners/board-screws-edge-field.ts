import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { usualEdgeDistance } from "../data/fasteners.js";

/**
 * Screws in one board with one spacing round its edges and another in the field. A corner is counted once, and so is
 * the end of a field line, which is a screw of the end row.
 *
 * @example
 * ```ts
 * const close = boardScrewsEdgeField({ acrossStuds: "4 ft", alongStuds: "8 ft", studSpacing: "16 in", screwSpacing: "8 in", edgeSpacing: "4 in" });
 * close.screws.toString(); // "94"
 * ```
 */
export const boardScrewsEdgeField = /* @__PURE__ */ calculation({
  id: "fasteners.board-screws-edge-field",
  title: "Screws in one board, edges and field spaced apart",
  given: {
    acrossStuds: { is: "length", unit: ["in", "mm"], symbol: "W", says: "board dimension across the studs", above: 0 },
    alongStuds: { is: "length", unit: ["in", "mm"], symbol: "H", says: "board dimension along the studs", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    screwSpacing: { is: "length", unit: ["in", "mm"], symbol: "s", says: "greatest spacing of screws in the field, along a stud", above: 0 },
    edgeSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_e", says: "greatest spacing of screws round the edges and ends", above: 0 },
    edgeDistance: { is: "length", unit: ["in", "mm"], symbol: "e", says: "distance of the outermost screws from the edges and ends of the board", above: 0, default: "3/8 in", basis: usualEdgeDistance },
  },
  steps: {
    edgeRun: { is: "length", unit: ["in", "mm"], symbol: "r_e", says: "from corner screw to corner screw along the studs", formula: "alongStuds - 2 * edgeDistance", basis: geometry, above: 0 },
    endRun: { is: "length", unit: ["in", "mm"], symbol: "r_w", says: "from corner screw to corner screw across the studs", formula: "acrossStuds - 2 * edgeDistance", basis: geometry, above: 0 },
    edgeSpaces: { is: "count", symbol: "k_e", says: "spaces in one edge line", formula: "ceil(edgeRun / edgeSpacing)", basis: arithmetic },
    endSpaces: { is: "count", symbol: "k_w", says: "spaces in one end row", formula: "ceil(endRun / edgeSpacing)", basis: arithmetic },
    perimeter: { is: "count", symbol: "N_p", says: "screws round the board, as many as there are spaces in the ring", formula: "2 * (edgeSpaces + endSpaces)", basis: arithmetic },
    fieldLines: { is: "count", symbol: "m", says: "lines of screws between the edges", formula: "ceil(acrossStuds / studSpacing) - 1", basis: geometry },
    fieldSpaces: { is: "count", symbol: "k_f", says: "spaces in one field line", formula: "ceil(edgeRun / screwSpacing)", basis: arithmetic },
    field: { is: "count", symbol: "N_f", says: "screws of the field lines without their two ends", formula: "fieldLines * (fieldSpaces - 1)", basis: arithmetic },
    screws: { is: "count", symbol: "N", says: "screws in one board", formula: "perimeter + field", basis: arithmetic },
  },
  cautions: [
    "A line is counted at each edge of the board; an edge that meets no stud needs backing: see fasteners.board-edges-on-studs.",
    "Screws of an end row between the studs need track or blocking behind them.",
    "Where two boards meet on a stud, each has its own line of screws.",
  ],
});
