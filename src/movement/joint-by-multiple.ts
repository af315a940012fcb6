import { calculation } from "../core/calculation.js";
import { movementCaution, stoneMultiple } from "../data/movement.js";

/**
 * Width of a flexible joint as a multiple of the movement expected, and not less than a least width.
 *
 * @example
 * ```ts
 * const joint = jointByMultiple({ movement: "0.144 in", multiple: 4, leastWidth: "3/8 in" });
 * joint.width.toString(); // "0.576 in"
 * ```
 */
export const jointByMultiple = /* @__PURE__ */ calculation({
  id: "movement.joint-by-multiple",
  title: "Width of a joint as a multiple of its movement",
  given: {
    movement: { is: "length", unit: ["in", "mm"], symbol: "m", says: "movement expected at the joint", above: 0 },
    multiple: { is: "ratio", symbol: "n", says: "how many times the movement the joint is wide: 2 to 4 in trade texts on stone", atLeast: 1 },
    leastWidth: { is: "length", unit: ["in", "mm"], symbol: "W_1", says: "least width, whatever the movement", atLeast: 0 },
  },
  steps: {
    byMovement: { is: "length", unit: ["in", "mm"], symbol: "W_m", says: "width by the movement", formula: "multiple * movement", basis: stoneMultiple },
    width: { is: "length", unit: ["in", "mm"], symbol: "W", says: "width of the joint", formula: "max(byMovement, leastWidth)", basis: stoneMultiple },
  },
  cautions: [movementCaution],
});
