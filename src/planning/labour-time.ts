import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * How much of a shift a crew takes for a labour.
 *
 * @example
 * ```ts
 * labourTime({ labour: "21.6 h", persons: 4, availability: "75 %", shiftShare: "80 %" }).lasts.toString(); // "9 h"
 * ```
 */
export const labourTime = /* @__PURE__ */ calculation({
  id: "planning.labour-time",
  title: "Time of a shift for a labour",
  given: {
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", above: 0 },
    persons: { is: "count", symbol: "c", says: "persons at this work", above: 0 },
    availability: { is: "ratio", unit: "%", symbol: "a", says: "share of the crew that is there", above: 0, atMost: 1 },
    shiftShare: { is: "ratio", unit: "%", symbol: "e", says: "share of the shift at the tool", above: 0, atMost: 1 },
  },
  steps: {
    lasts: { is: "time", unit: "h", symbol: "T", says: "time of the shift", formula: "labour / (persons * availability * shiftShare)", basis: arithmetic },
  },
});
