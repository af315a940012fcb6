import { calculation } from "../core/calculation.js";
import { blockSpacing, movementCaution } from "../data/movement.js";

/**
 * Spacing of control joints in a wall of concrete masonry by its height, and what is left of it at a corner.
 *
 * @example
 * ```ts
 * const joints = panelSpacing({ height: "10 ft" });
 * joints.spacing.toString(); // "15 ft"
 * joints.fromCorner.toString(); // "7.5 ft"
 * ```
 */
export const panelSpacing = /* @__PURE__ */ calculation({
  id: "movement.panel-spacing",
  title: "Spacing of joints in concrete masonry",
  given: {
    height: { is: "length", unit: ["ft", "m"], symbol: "H", says: "height of the wall between its supports", above: 0 },
  },
  constants: {
    lengthToHeight: { is: "ratio", symbol: "r", value: "1.5", says: "greatest length of a panel to its height", basis: blockSpacing },
    mostSpacing: { is: "length", unit: ["ft", "m"], symbol: "S_m", value: "25 ft", says: "greatest spacing, whatever the height", basis: blockSpacing },
  },
  steps: {
    byHeight: { is: "length", unit: ["ft", "m"], symbol: "S_h", says: "spacing by the height", formula: "lengthToHeight * height", basis: blockSpacing },
    spacing: { is: "length", unit: ["ft", "m"], symbol: "S", says: "greatest spacing of joints", formula: "min(byHeight, mostSpacing)", basis: blockSpacing },
    fromCorner: { is: "length", unit: ["ft", "m"], symbol: "S_c", says: "greatest distance from a corner or crossing wall", formula: "spacing / 2", basis: blockSpacing },
  },
  cautions: [movementCaution, "The spacing holds with 0.025 in2 of level reinforcement to the foot of height, which the designer of the backing sets."],
});
