import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * What each joint must be widened by, or narrowed where the error is below nought, to make up an error.
 *
 * @example
 * ```ts
 * errorPerJoint({ error: "1 in", joints: 10 }).perJoint.toString(); // "0.1 in"
 * ```
 */
export const errorPerJoint = /* @__PURE__ */ calculation({
  id: "layout.error-per-joint",
  title: "Error spread over joints",
  given: {
    error: { is: "length", unit: ["in", "mm"], symbol: "e", says: "how far the height that is wanted lies over the course line; below nought where it lies under it" },
    joints: { is: "count", symbol: "m", says: "joints it is spread over", atLeast: 1, whole: true },
  },
  steps: {
    perJoint: { is: "length", unit: ["in", "mm"], symbol: "e_j", says: "change of each joint", formula: "error / joints", basis: arithmetic },
  },
});
