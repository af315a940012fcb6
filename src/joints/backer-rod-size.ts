import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { usualRodOversize, usualRodSizes } from "../data/joints.js";

/**
 * Thickness of backer rod for a sealed joint, up to the next size.
 *
 * @example
 * ```ts
 * backerRodSize({ width: "3/8 in" }).rod.toString(); // "0.5 in"
 * ```
 */
export const backerRodSize = /* @__PURE__ */ calculation({
  id: "joints.backer-rod-size",
  title: "Size of backer rod",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the joint", above: 0 },
    oversize: { is: "ratio", unit: "%", symbol: "f", says: "how much thicker the rod is than the joint", above: 0, atMost: 1, default: "25 %", basis: usualRodOversize },
    sizeStep: { is: "length", unit: ["in", "mm"], symbol: "e", says: "step from one size of rod to the next", above: 0, default: "1/8 in", basis: usualRodSizes },
  },
  steps: {
    wanted: { is: "length", unit: ["in", "mm"], symbol: "d_w", says: "thickness wanted", formula: "width * (1 + oversize)", basis: usualRodOversize },
    rod: { is: "length", unit: ["in", "mm"], symbol: "d", says: "next size up", formula: "ceil(wanted / sizeStep) * sizeStep", basis: arithmetic },
  },
});
