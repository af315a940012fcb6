import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Area of barrier that is turned past an edge: into an opening, over a parapet, under a sill, round a corner.
 *
 * @example
 * ```ts
 * returnStrip({ length: "14 ft", depth: "6 in" }).area.toString(); // "7 ft2"
 * ```
 */
export const returnStrip = /* @__PURE__ */ calculation({
  id: "membrane.return-strip",
  title: "Barrier turned past an edge",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of the edge", atLeast: 0 },
    depth: { is: "length", unit: ["in", "mm"], symbol: "d", says: "how far the barrier goes past the edge", atLeast: 0 },
  },
  steps: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "length * depth", basis: geometry },
  },
});
