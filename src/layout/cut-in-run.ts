import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The size of the pieces that fill what whole units and their joints leave of a run, all cut alike.
 *
 * @example
 * ```ts
 * // 30 in: three whole courses of 7-5/8 in, a cut one, and four joints of 3/8 in.
 * cutInRun({ run: "30 in", wholeTotal: "22-7/8 in", joints: 4, joint: "3/8 in", cuts: 1 }).cut.toString(); // "5.625 in"
 * ```
 */
export const cutInRun = /* @__PURE__ */ calculation({
  id: "layout.cut-in-run",
  title: "Cut pieces that fill a run",
  given: {
    run: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height or length to be filled, between its two ends", above: 0 },
    wholeTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of all whole units in the run added up, without joints", atLeast: 0 },
    joints: { is: "count", symbol: "m", says: "joints in the run", atLeast: 0, whole: true },
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", atLeast: 0 },
    cuts: { is: "count", symbol: "k", says: "pieces cut alike", atLeast: 1, whole: true },
  },
  steps: {
    cut: { is: "length", unit: ["in", "mm"], symbol: "c", says: "size of each cut piece", formula: "(run - wholeTotal - joints * joint) / cuts", basis: geometry, above: 0 },
  },
});
