import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { movementCaution, wideRange } from "../data/movement.js";

/**
 * Width of a joint where the year's temperatures lie more than 100 degF apart: 1/16 in more for each 15 degF beyond, a begun
 * one counted whole.
 *
 * @example
 * ```ts
 * widthForRange({ leastWidth: "3/8 in", temperatureRange: "115 degF" }).width.toString(); // "0.4375 in"
 * ```
 */
export const widthForRange = /* @__PURE__ */ calculation({
  id: "movement.width-for-range",
  title: "Width of a joint by the range of temperature",
  given: {
    leastWidth: { is: "length", unit: ["in", "mm"], symbol: "W_1", says: "width to a range of 100 degF", above: 0 },
    temperatureRange: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "T", says: "coldest to hottest of the year", atLeast: 0 },
  },
  constants: {
    usualRange: { is: "temperatureDifference", unit: "degF", symbol: "T_0", value: "100 degF", says: "range that the least width is for", basis: wideRange },
    rangeStep: { is: "temperatureDifference", unit: "degF", symbol: "T_s", value: "15 degF", says: "range that asks for one step more", basis: wideRange },
    widthStep: { is: "length", unit: "in", symbol: "W_s", value: "1/16 in", says: "what one step adds", basis: wideRange },
  },
  steps: {
    countedRange: { is: "temperatureDifference", unit: ["degF", "degC"], symbol: "T_c", says: "range that counts, not less than the usual one", formula: "max(temperatureRange, usualRange)", basis: wideRange },
    widthSteps: { is: "count", symbol: "n", says: "steps, a begun one counted whole", formula: "ceil((countedRange - usualRange) / rangeStep)", basis: wideRange },
    extra: { is: "length", unit: ["in", "mm"], symbol: "W_e", says: "added for the range", formula: "widthSteps * widthStep", basis: wideRange },
    width: { is: "length", unit: ["in", "mm"], symbol: "W", says: "width of the joint", formula: "leastWidth + extra", basis: arithmetic },
  },
  cautions: [movementCaution],
});
