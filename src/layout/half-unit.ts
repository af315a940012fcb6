import { calculation } from "../core/calculation.js";
import { geometry } from "../data/basis.js";

/**
 * Half a unit as masons cut it: two halves and the joint between them make a whole unit.
 *
 * @example
 * ```ts
 * halfUnit({ unit: "11-5/8 in", joint: "3/8 in" }).half.toString(); // "5.625 in"
 * ```
 */
export const halfUnit = /* @__PURE__ */ calculation({
  id: "layout.half-unit",
  title: "Half a unit, less its share of the joint",
  given: {
    unit: { is: "length", unit: ["in", "mm"], symbol: "u", says: "actual size of a whole unit, the way it is cut", above: 0 },
    joint: { is: "length", unit: ["in", "mm"], symbol: "j", says: "width of each joint", atLeast: 0 },
  },
  steps: {
    half: { is: "length", unit: ["in", "mm"], symbol: "c", says: "size of each half", formula: "(unit - joint) / 2", basis: geometry, above: 0 },
  },
});
