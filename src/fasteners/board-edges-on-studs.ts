import { composed } from "../core/composed.js";
import { isNought, subtract } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { boardModules } from "./board-modules.js";
import { say } from "./refusals.js";

/**
 * Whether the edges of a board meet studs, and the backing one board needs where they do not. A board whose edges meet
 * neither stud nor backing is refused: a line of screws counted there would hit no steel.
 *
 * @example
 * ```ts
 * const small = boardEdgesOnStuds({ acrossStuds: "3 ft", alongStuds: "5 ft", studSpacing: "16 in", edgesBacked: true });
 * small.edgesMeetStuds; // false
 * small.backing.toString(); // "5 ft"
 * ```
 */
export const boardEdgesOnStuds = /* @__PURE__ */ composed({
  id: "fasteners.board-edges-on-studs",
  title: "Board edges on studs or on backing",
  given: {
    acrossStuds: { is: "length", unit: ["in", "mm"], symbol: "W", says: "board dimension across the studs", above: 0 },
    alongStuds: { is: "length", unit: ["in", "mm"], symbol: "H", says: "board dimension along the studs", above: 0 },
    studSpacing: { is: "length", unit: ["in", "mm"], symbol: "S", says: "spacing of the studs, centre to centre", above: 0 },
    edgesBacked: { oneOf: [true, false], says: "whether an edge between studs gets backing of its own" },
  },
  run: ({ acrossStuds, alongStuds, studSpacing, edgesBacked }, work) => {
    const { pastStud, cutTo } = work.part(boardModules, { acrossStuds, studSpacing }).answers;
    const edgesMeetStuds = isNought(pastStud);
    if (!edgesMeetStuds && !edgesBacked) {
      const wanted = isNought(cutTo) ? say("backTheEdges") : say("backTheEdgesOrCut", { cutTo });
      work.refuse(refusal(["edgesBacked"], say("endsPastStud", { width: acrossStuds, past: pastStud }), wanted));
    }
    if (!edgesMeetStuds) {
      work.caution("Backing is counted once a board, for the joint it shares with the next; the ends of a row and openings come besides, so order by the layout of the boards.");
    }
    return { edgesMeetStuds, backing: edgesMeetStuds ? subtract(alongStuds, alongStuds) : alongStuds };
  },
});
