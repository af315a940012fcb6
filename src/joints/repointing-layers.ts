import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { repointingLayers as layerRule } from "../data/joints.js";

/**
 * Layers in which a raked-out joint is repointed. A new joint filled from a bag is filled in one pass and has none.
 *
 * @example
 * ```ts
 * repointingLayers({ depth: "3/4 in" }).layers.toString(); // "3"
 * ```
 */
export const repointingLayers = /* @__PURE__ */ calculation({
  id: "joints.repointing-layers",
  title: "Layers for repointing",
  given: {
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "depth raked out", above: 0 },
    layer: { is: "length", unit: ["in", "mm"], symbol: "t", says: "thickness of a layer", above: 0, default: "1/4 in", basis: layerRule },
  },
  steps: {
    layers: { is: "count", symbol: "n", says: "layers, each left to thumbprint hardness", formula: "ceil(depth / layer)", basis: arithmetic },
  },
  cautions: ["Where the joint is deeper than 1 in, the deepest part is packed first."],
});
