import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Mortar that a round tool presses out of a concave joint: the segment of its circle between the two edges of the joint.
 *
 * @example
 * ```ts
 * const tooled = concaveLoss({ width: "3/8 in", toolRadius: "3/16 in", depth: "3/4 in" });
 * tooled.removed.to("in2").toFixed(4); // "0.0552"
 * tooled.share.to("%").toFixed(1); // "19.6"
 * ```
 */
export const concaveLoss = /* @__PURE__ */ calculation({
  id: "joints.concave-loss",
  title: "Mortar taken out by a concave tool",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    toolRadius: { is: "length", unit: ["in", "mm"], symbol: "r", says: "radius of the jointing tool", above: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint that is filled", above: 0 },
  },
  steps: {
    spare: { is: "length", unit: ["in", "mm"], symbol: "s", says: "radius of the tool beyond half the joint; a smaller tool does not reach both edges", formula: "toolRadius - width / 2", basis: geometry, atLeast: 0 },
    rise: { is: "length", unit: ["in", "mm"], symbol: "m", says: "from the centre of the tool to the line between the edges", formula: "sqrt(toolRadius ^ 2 - width ^ 2 / 4)", basis: geometry },
    left: { is: "length", unit: ["in", "mm"], symbol: "d_l", says: "depth of mortar left behind the deepest point", formula: "depth - (toolRadius - rise)", basis: geometry, above: 0 },
    removed: { is: "area", unit: ["in2", "mm2"], symbol: "A_t", says: "section taken out of the joint", formula: "toolRadius ^ 2 * asin(width / (2 * toolRadius)) - width / 2 * rise", basis: geometry },
    share: { is: "ratio", unit: "%", symbol: "f_t", says: "share of the filled joint that is taken out", formula: "removed / (width * depth)", basis: geometry },
  },
});
