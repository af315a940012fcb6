import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Mortar struck off a sloped joint: weathered where the slope is set in at the top, struck where at the bottom.
 *
 * @example
 * ```ts
 * weatheredLoss({ width: "3/8 in", profileDepth: "1/8 in", depth: "3/4 in" }).removed.toString(); // "0.0234375 in2"
 * ```
 */
export const weatheredLoss = /* @__PURE__ */ calculation({
  id: "joints.weathered-loss",
  title: "Mortar struck off a sloped joint",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    profileDepth: { is: "length", unit: ["in", "mm"], symbol: "h", says: "how far the slope is set in at its deepest", above: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint that is filled", above: 0 },
  },
  steps: {
    left: { is: "length", unit: ["in", "mm"], symbol: "d_l", says: "depth of mortar left behind the deepest point", formula: "depth - profileDepth", basis: geometry, above: 0 },
    removed: { is: "area", unit: ["in2", "mm2"], symbol: "A_t", says: "section taken off the joint", formula: "width * profileDepth / 2", basis: geometry },
    share: { is: "ratio", unit: "%", symbol: "f_t", says: "share of the filled joint that is taken off", formula: "removed / (width * depth)", basis: geometry },
  },
});
