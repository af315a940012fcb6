import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Backing for board edges that meet no stud: once a board, for the joint it shares with the next.
 *
 * @example
 * ```ts
 * edgeBacking({ boards: 24, backing: "5 ft" }).length.toString(); // "120 ft"
 * ```
 */
export const edgeBacking = /* @__PURE__ */ calculation({
  id: "takeoff.edge-backing",
  title: "Backing for board edges",
  given: {
    boards: { is: "count", symbol: "n", says: "boards placed", above: 0 },
    backing: { is: "length", unit: ["ft", "m"], symbol: "l_b", says: "backing of one board", above: 0 },
  },
  steps: {
    length: { is: "length", unit: ["ft", "m"], symbol: "L", says: "backing together", formula: "boards * backing", basis: geometry },
  },
  cautions: ["An estimate by boards: the ends of rows and the edges of openings come besides; the layout of the boards counts them."],
});
