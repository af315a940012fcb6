import { calculation } from "../core/calculation.js";
import { movementCaution, thermalGrowth } from "../data/movement.js";

/**
 * Strain of masonry that is free to move: by moisture and by heat together.
 *
 * @example
 * ```ts
 * unrestrainedStrain({ moistureStrain: 0.0005, expansion: "4e-6 /degF", temperatureRange: "100 degF" }).strain.toString(); // "0.0009"
 * ```
 */
export const unrestrainedStrain = /* @__PURE__ */ calculation({
  id: "movement.unrestrained-strain",
  title: "Strain of masonry that is free to move",
  given: {
    moistureStrain: { is: "ratio", symbol: "k", says: "growth of clay or shrinkage of concrete by moisture, to the length; carbonation counts with it", atLeast: 0, below: 1 },
    expansion: { is: "expansion", unit: ["/degF", "/degC"], symbol: "a", says: "coefficient of thermal expansion of the material", above: 0 },
    temperatureRange: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "T", says: "coldest to hottest of the surface itself, which runs far beyond the air", atLeast: 0 },
  },
  steps: {
    strain: { is: "ratio", symbol: "e", says: "movement to the length", formula: "moistureStrain + expansion * temperatureRange", basis: thermalGrowth },
  },
  cautions: [movementCaution],
});
