import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Mortar that fills a length of joint: irregular stone measured by the running foot, perimeters, repairs.
 *
 * @example
 * ```ts
 * jointByLength({ length: "45 ft", width: "3/8 in", depth: "1/2 in" }).volume.to("ft3").toFixed(3); // "0.059"
 * ```
 */
export const jointByLength = /* @__PURE__ */ calculation({
  id: "joints.joint-by-length",
  title: "Joint mortar by length",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of joint, crossings counted once", above: 0 },
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "mean width of the joint", above: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint to be filled", above: 0 },
  },
  steps: {
    section: { is: "area", unit: ["in2", "mm2"], symbol: "A_j", says: "section of the joint", formula: "width * depth", basis: geometry },
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar that fills the joint", formula: "length * section", basis: geometry },
  },
  cautions: ["A tooled joint holds less than its full depth: see joints.tooling-loss."],
});
