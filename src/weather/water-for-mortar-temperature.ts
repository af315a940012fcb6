import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { blend, scaleZero } from "../data/weather.js";

/**
 * Temperature of the mixing water that gives fresh mortar a temperature that is wanted.
 *
 * @example
 * ```ts
 * waterForMortarTemperature({
 *   sandMass: "282 lb", sandTemperature: "35 degF", moistureMass: "14.1 lb", cementMass: "94 lb", cementTemperature: "40 degF", waterMass: "33 lb", mortarTemperature: "60 degF",
 * }).waterTemperature.to("degF").toFixed(1); // "130.2"
 * ```
 */
export const waterForMortarTemperature = /* @__PURE__ */ calculation({
  id: "weather.water-for-mortar-temperature",
  title: "Water for a temperature of fresh mortar",
  given: {
    sandMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_a", says: "dry sand", above: 0 },
    sandTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_a", says: "temperature of the sand", atLeast: "32 degF", atMost: "212 degF" },
    moistureMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_f", says: "free moisture in the sand", atLeast: 0 },
    cementMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_c", says: "cement and lime", above: 0 },
    cementTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_c", says: "temperature of the cement", atLeast: "-20 degF", atMost: "180 degF" },
    waterMass: { is: "mass", unit: ["lb", "kg"], symbol: "W_m", says: "mixing water", above: 0 },
    mortarTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T", says: "temperature wanted", atLeast: "32 degF", atMost: "120 degF" },
  },
  constants: {
    heatShare: { is: "ratio", symbol: "c", value: "0.22", says: "heat held by solids to that by water", basis: blend },
    freezing: { is: "temperature", unit: ["degF", "degC"], symbol: "T_0", value: "32 degF", says: "where heat is counted from", basis: scaleZero },
  },
  steps: {
    solidsCount: { is: "mass", unit: ["lb", "kg"], symbol: "S", says: "water that holds as much heat", formula: "heatShare * (sandMass + cementMass)", basis: blend },
    overFreezing: {
      is: "temperatureDifference", unit: ["degF", "degC"], symbol: "D", says: "water over freezing",
      formula: "((mortarTemperature - freezing) * (solidsCount + moistureMass + waterMass) - heatShare * (sandMass * (sandTemperature - freezing) + cementMass * (cementTemperature - freezing)) - moistureMass * (sandTemperature - freezing)) / waterMass",
      basis: blend, differs: "the equation solved for the temperature of the water",
    },
    waterTemperature: { is: "temperature", unit: ["degF", "degC"], symbol: "T_m", formula: "freezing + overFreezing", basis: arithmetic, atLeast: "32 degF", atMost: "212 degF" },
  },
  cautions: ["Hot water goes to the sand first and cement comes last, or it sets in a flash. It scalds: carry it covered."],
});
