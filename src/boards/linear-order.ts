import { calculation } from "../core/calculation.js";
import { arithmetic, geometry } from "../data/basis.js";

/**
 * Pieces of a straight run that lap each other: screeds, flashings, casing beads, sills, caps, ledgers. The first piece
 * covers its whole length, each further one its length less the lap.
 *
 * @example
 * ```ts
 * const flashing = linearOrder({ length: "64 ft", pieceLength: "10 ft", lap: "4 in", waste: "5 %" });
 * flashing.placed.toString(); // "7"
 * flashing.toOrder.toString(); // "7"
 * ```
 */
export const linearOrder = /* @__PURE__ */ calculation({
  id: "boards.linear-order",
  title: "Pieces for a straight run",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length to be covered", above: 0 },
    pieceLength: { is: "length", unit: ["ft", "m"], symbol: "l_p", says: "length of one piece", above: 0 },
    lap: { is: "length", unit: ["in", "mm"], symbol: "l", says: "lap of one piece over the next; nought where they butt", atLeast: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "ends that are cut off and thrown away, on top of the net", atLeast: 0, below: 1 },
  },
  steps: {
    cover: { is: "length", unit: ["ft", "m"], symbol: "c", says: "what each further piece adds to the run", formula: "pieceLength - lap", basis: geometry, above: 0 },
    counted: { is: "length", unit: ["ft", "m"], symbol: "L_c", says: "length that is counted, a piece at the least", formula: "max(length, pieceLength)", basis: geometry },
    placed: { is: "count", symbol: "n_p", says: "pieces in the run, the last one cut", formula: "ceil((counted - lap) / cover)", basis: geometry },
    withWaste: { is: "length", unit: ["ft", "m"], symbol: "L_w", says: "length with waste", formula: "length * (1 + waste)", basis: arithmetic },
    countedWithWaste: { is: "length", unit: ["ft", "m"], symbol: "L_cw", says: "the same with waste", formula: "max(withWaste, pieceLength)", basis: geometry },
    toOrder: { is: "count", symbol: "n_o", says: "whole pieces to order", formula: "ceil((countedWithWaste - lap) / cover)", basis: geometry },
  },
  cautions: ["Counted as one run; where several runs are cut from the same pieces, see boards.cut-stock."],
});
