import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * The joint that leaves cut pieces of a given size in a run.
 *
 * @example
 * ```ts
 * // What joint leaves one cut course of 6 in above three whole ones?
 * jointForCut({ run: "30 in", wholeTotal: "22-7/8 in", cuts: 1, cut: "6 in", joints: 4 }).joint.toString(); // "0.28125 in"
 * ```
 */
export const jointForCut = /* @__PURE__ */ calculation({
  id: "layout.joint-for-cut",
  title: "Joint that leaves cut pieces of a given size",
  given: {
    run: { is: "length", unit: ["in", "mm"], symbol: "H", says: "height or length to be filled, between its two ends", above: 0 },
    wholeTotal: { is: "length", unit: ["in", "mm"], symbol: "U", says: "actual sizes of all whole units in the run added up, without joints", atLeast: 0 },
    cuts: { is: "count", symbol: "k", says: "pieces cut alike", atLeast: 1, whole: true },
    cut: { is: "length", unit: ["in", "mm"], symbol: "c", says: "size of each cut piece", above: 0 },
    joints: { is: "count", symbol: "m", says: "joints in the run", atLeast: 1, whole: true },
  },
  steps: {
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", formula: "(run - wholeTotal - cuts * cut) / joints", basis: geometry, atLeast: 0 },
  },
});
