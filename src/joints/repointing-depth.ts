import { calculation } from "../core/calculation.js";
import { repointingDepth as depthRule } from "../data/joints.js";

/**
 * How deep an old joint is raked out before it is repointed.
 *
 * @example
 * ```ts
 * const rake = repointingDepth({ width: "3/8 in" });
 * rake.least.toString(); // "0.75 in"
 * rake.most.toString(); // "0.9375 in"
 * ```
 */
export const repointingDepth = /* @__PURE__ */ calculation({
  id: "joints.repointing-depth",
  title: "Depth to rake out for repointing",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
  },
  steps: {
    least: { is: "length", unit: ["in", "mm"], symbol: "d_1", says: "least depth", formula: "2 * width", basis: depthRule },
    most: { is: "length", unit: ["in", "mm"], symbol: "d_2", says: "usual greatest depth, unless sound mortar lies deeper", formula: "2.5 * width", basis: depthRule },
  },
  cautions: ["Raking out sets silica free: draw the dust off at the blade or rake by hand, wear the mask that the local rule asks for, and keep others out of the dust."],
});
