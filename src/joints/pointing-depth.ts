import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Depth of joint that is left to be pointed: from the face back to the wall, less what was pressed out of the bed into
 * the joint.
 *
 * @example
 * ```ts
 * pointingDepth({ unitThickness: "1-1/2 in", bed: "1/2 in", squeezeOut: "3/4 in" }).depth.toString(); // "1.25 in"
 * ```
 */
export const pointingDepth = /* @__PURE__ */ calculation({
  id: "joints.pointing-depth",
  title: "Depth of joint left to be pointed",
  given: {
    unitThickness: { is: "length", unit: ["in", "mm"], symbol: "u", says: "mean thickness of the units at their edges", above: 0 },
    bed: { is: "length", unit: ["in", "mm"], symbol: "b", says: "mean thickness of the bed behind the units", atLeast: 0 },
    squeezeOut: { is: "length", unit: ["in", "mm"], symbol: "q", says: "depth of joint filled by mortar pressed out of the bed, from the wall out", atLeast: 0 },
  },
  steps: {
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth of joint to be filled", formula: "unitThickness + bed - squeezeOut", basis: geometry, above: 0 },
  },
  cautions: ["Measure the depth in a few open joints once the units are set: squeeze-out varies from setter to setter."],
});
