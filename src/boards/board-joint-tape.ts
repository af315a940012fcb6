import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { usualTapeOverlap } from "../data/boards.js";

/**
 * Tape over the joints between boards, with its overlaps, and the rolls to order.
 *
 * @example
 * ```ts
 * const tape = boardJointTape({ jointLength: "200 ft", overlaps: 24, rollLength: "50 ft", waste: "10 %" });
 * tape.net.toString(); // "204 ft"
 * tape.rolls.toString(); // "5"
 * ```
 */
export const boardJointTape = /* @__PURE__ */ calculation({
  id: "boards.board-joint-tape",
  title: "Tape for the joints between boards",
  given: {
    jointLength: { is: "length", unit: ["ft", "m"], symbol: "j", says: "joints to be taped, added up", above: 0 },
    overlaps: { is: "count", symbol: "k", says: "places where one length of tape laps over another", atLeast: 0, whole: true },
    overlap: { is: "length", unit: ["in", "mm"], symbol: "l", says: "lap of one length of tape over another", atLeast: 0, default: "2 in", basis: usualTapeOverlap },
    rollLength: { is: "length", unit: ["ft", "m"], symbol: "R", says: "length of tape on a roll", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "tape that is torn off and thrown away, on top of the net", atLeast: 0, below: 1 },
  },
  steps: {
    net: { is: "length", unit: ["ft", "m"], symbol: "t", says: "tape on the wall", formula: "jointLength + overlaps * overlap", basis: arithmetic },
    withWaste: { is: "length", unit: ["ft", "m"], symbol: "t_w", says: "tape with waste", formula: "net * (1 + waste)", basis: arithmetic },
    rolls: { is: "count", symbol: "r", says: "whole rolls to order", formula: "ceil(withWaste / rollLength)", basis: arithmetic },
  },
});
