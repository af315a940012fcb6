import { calculation } from "../core/calculation.js";
import { moistureGrowth, movementCaution } from "../data/movement.js";

/**
 * How much a length grows or shrinks for good by moisture, from the strain of its material.
 *
 * @example
 * ```ts
 * moistureMovement({ length: "20 ft", moistureStrain: 0.0005 }).movement.toString(); // "0.12 in"
 * ```
 */
export const moistureMovement = /* @__PURE__ */ calculation({
  id: "movement.moisture-movement",
  title: "Moisture movement",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length that moves, from joint to joint", above: 0 },
    moistureStrain: { is: "ratio", symbol: "k", says: "growth of clay or shrinkage of concrete by moisture, to the length; carbonation counts with it", atLeast: 0, below: 1 },
  },
  steps: {
    movement: { is: "length", unit: ["in", "mm"], symbol: "m", says: "growth or shrinkage", formula: "length * moistureStrain", basis: moistureGrowth },
  },
  cautions: [movementCaution, "Fired clay grows and closes joints; cement-based units shrink and open them: say which way it goes."],
});
