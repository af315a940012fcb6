import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { blend, scaleZero } from "../data/weather.js";

/**
 * Temperature of fresh mortar from the masses and temperatures of what goes into it; moisture in the sand is as warm as the sand.
 *
 * @example
 * ```ts
 * freshMortarTemperature({
 *   sandMass: "282 lb", sandTemperature: "35 degF", moistureMass: "14.1 lb", cementMass: "94 lb", cementTemperature: "40 degF", waterMass: "33 lb", waterTemperature: "140 degF",
 * }).mortarTemperature.to("degF").toFixed(1); // "62.5"
 * ```
 */
export const freshMortarTemperature = /* @__PURE__ */ calculation({
  id: "weather.fresh-mortar-temperature",
  title: "Temperature of fresh mortar",
  given: {
    sandMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_a", says: "dry sand", above: 0 },
    sandTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_a", says: "temperature of the sand", atLeast: "32 degF", atMost: "212 degF" },
    moistureMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_f", says: "free moisture in the sand", atLeast: 0 },
    cementMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_c", says: "cement and lime", above: 0 },
    cementTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_c", says: "temperature of the cement", atLeast: "-20 degF", atMost: "180 degF" },
    waterMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_m", says: "mixing water", above: 0 },
    waterTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_m", says: "temperature of the mixing water", atLeast: "32 degF", atMost: "212 degF" },
  },
  constants: {
    heatShare: { is: "ratio", symbol: "c", value: "0.22", says: "heat held by solids to that by water", basis: blend },
    freezing: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "32 degF", says: "where heat is counted from", basis: scaleZero },
  },
  steps: {
    solidsCount: { is: "mass", unit: ["lb", "kg"], symbol: "S", says: "water that holds as much heat", formula: "heatShare * (sandMass + cementMass)", basis: blend },
    overFreezing: {
      is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D", says: "mortar over freezing",
      formula: "(heatShare * (sandMass * (sandTemperature - freezing) + cementMass * (cementTemperature - freezing)) + moistureMass * (sandTemperature - freezing) + waterMass * (waterTemperature - freezing)) / (solidsCount + moistureMass + waterMass)",
      basis: blend, differs: "the copy has the water inside the 0.22; it stands outside",
    },
    mortarTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature of the fresh mortar", formula: "freezing + overFreezing", basis: arithmetic },
  },
  cautions: ["Hot water goes to the sand first and cement comes last, or it sets in a flash. It scalds: carry it covered."],
});
