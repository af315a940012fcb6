import { calculation } from "../core/calculation.js";
import { movementCaution, thermalGrowth } from "../data/movement.js";

/**
 * How much a length that is free to move grows between two temperatures of its surface.
 *
 * @example
 * ```ts
 * thermalMovement({ length: "20 ft", expansion: "4e-6 /degF", temperatureRange: "150 degF" }).movement.toString(); // "0.144 in"
 * ```
 */
export const thermalMovement = /* @__PURE__ */ calculation({
  id: "movement.thermal-movement",
  title: "Thermal movement",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "L", says: "length that moves, from joint to joint", above: 0 },
    expansion: { is: "expansion", unit: ["/degF", "/degC"], symbol: "a", says: "coefficient of thermal expansion of the material", above: 0 },
    temperatureRange: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "T", says: "coldest to hottest of the surface itself, which runs far beyond the air", atLeast: 0 },
  },
  steps: {
    movement: { is: "length", unit: ["in", "mm"], symbol: "m", says: "growth from coldest to hottest", formula: "length * expansion * temperatureRange", basis: thermalGrowth },
  },
  cautions: [movementCaution, "A dark wall in the sun is far hotter than the air: take the range of its surface."],
});
