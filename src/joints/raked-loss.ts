import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Mortar raked out of a joint, square and to one depth.
 *
 * @example
 * ```ts
 * rakedLoss({ width: "3/8 in", profileDepth: "1/4 in", depth: "3/4 in" }).removed.toString(); // "0.09375 in2"
 * ```
 */
export const rakedLoss = /* @__PURE__ */ calculation({
  id: "joints.raked-loss",
  title: "Mortar raked out of a joint",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    profileDepth: { is: "length", unit: ["in", "mm"], symbol: "h", says: "depth raked out", above: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint that is filled", above: 0 },
  },
  steps: {
    left: { is: "length", unit: ["in", "mm"], symbol: "d_l", says: "depth of mortar left behind the rake", formula: "depth - profileDepth", basis: geometry, above: 0 },
    removed: { is: "area", unit: ["in2", "mm2"], symbol: "A_t", says: "section taken out of the joint", formula: "width * profileDepth", basis: geometry },
    share: { is: "ratio", unit: "%", symbol: "f_t", says: "share of the filled joint that is taken out", formula: "removed / (width * depth)", basis: geometry },
  },
  cautions: ["A raked joint holds water on the edge of the unit below: outside it weathers worst of all."],
});
