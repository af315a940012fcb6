import { calculation } from "../core/calculation.js";
import { markRounding } from "../data/layout.js";

/**
 * A height rounded to the nearest division of the tape; a half goes up.
 *
 * @example
 * ```ts
 * // 100 courses of 8/3 in, rounded once; 100 times the rounded course would be 268.75 in.
 * tapeMark({ height: "800/3 in", division: "1/16 in" }).mark.toString(); // "266.6875 in"
 * ```
 */
export const tapeMark = /* @__PURE__ */ calculation({
  id: "layout.tape-mark",
  title: "Height as a mark on the tape",
  given: {
    height: { is: "length", unit: ["in", "mm"], symbol: "h", says: "height above the foot of the rod", atLeast: 0 },
    division: { is: "length", unit: ["in", "mm"], symbol: "d", says: "smallest division of the tape", above: 0 },
  },
  steps: {
    mark: { is: "length", unit: ["in", "mm"], symbol: "m", says: "the nearest division", formula: "round(height / division) * division", basis: markRounding },
  },
});
