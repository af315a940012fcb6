import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";
import { usualEdgeDistance } from "../data/fasteners.js";

/**
 * Screws in a row along one raking edge of a board, where a track or a plate runs behind it. The spaces are rounded up, so that
 * none is wider than the spacing asked for.
 *
 * @example
 * ```ts
 * const row = rakingScrews({ levelLength: "48 in", rise: "36 in", screwSpacing: "8 in" });
 * row.length.toString(); // "60 in"
 * row.screws.toString(); // "9"
 * ```
 */
export const rakingScrews = /* @__PURE__ */ calculation({
  id: "fasteners.raking-screws",
  title: "Screws along a raking edge",
  given: {
    levelLength: { is: "length", unit: ["in", "mm"], symbol: "a", says: "how far the edge of this board runs, measured level", above: 0 },
    rise: { is: "length", unit: ["in", "mm"], symbol: "b", says: "how far it rises over that", above: 0 },
    screwSpacing: { is: "length", unit: ["in", "mm"], symbol: "s", says: "greatest spacing of screws along the edge", above: 0 },
    edgeDistance: { is: "length", unit: ["in", "mm"], symbol: "e", says: "distance of the first and last screw of the row from the ends of the edge, along it", above: 0, default: "3/8 in", basis: usualEdgeDistance },
  },
  steps: {
    length: { is: "length", unit: ["in", "mm"], symbol: "l", says: "length of the edge", formula: "sqrt(levelLength ^ 2 + rise ^ 2)", basis: geometry },
    run: { is: "length", unit: ["in", "mm"], symbol: "r", says: "from the first screw of the row to the last", formula: "length - 2 * edgeDistance", basis: geometry, above: 0 },
    spaces: { is: "count", symbol: "k", says: "spaces between the screws", formula: "ceil(run / screwSpacing)", basis: arithmetic },
    screws: { is: "count", symbol: "n", says: "screws in the row", formula: "spaces + 1", basis: arithmetic },
    actualSpacing: { is: "length", unit: ["in", "mm"], symbol: "s_a", says: "spacing with the row divided evenly", formula: "run / spaces", basis: arithmetic },
  },
  cautions: [
    "At a sharp corner the first screw must keep the edge distance from both edges, so it stands further in.",
    "Where this row is counted, the top screw of each stud line under the edge may be counted twice.",
  ],
});
