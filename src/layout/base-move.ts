import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * How far the base line is moved so that the worst error over it is as small as can be: the errors are shared out evenly
 * over and under the course lines.
 *
 * @example
 * ```ts
 * const base = baseMove({ mostError: "1-1/2 in", leastError: "1/2 in" });
 * base.move.toString(); // "1 in"
 * base.worstLeft.toString(); // "0.5 in"
 * ```
 */
export const baseMove = /* @__PURE__ */ calculation({
  id: "layout.base-move",
  title: "Move of the base line for the least error",
  given: {
    mostError: { is: "length", unit: ["in", "mm"], symbol: "e_m", says: "the error farthest over its course line, or the least far under" },
    leastError: { is: "length", unit: ["in", "mm"], symbol: "e_l", says: "the error farthest under its course line, or the least far over" },
  },
  steps: {
    move: { is: "length", unit: ["in", "mm"], symbol: "m", says: "how far up the base line is moved; below nought where down", formula: "(mostError + leastError) / 2", basis: arithmetic },
    worstLeft: { is: "length", unit: ["in", "mm"], symbol: "e", says: "the worst error that is left, over or under", formula: "(mostError - leastError) / 2", basis: arithmetic, atLeast: 0 },
  },
});
