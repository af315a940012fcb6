import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Labour that a crew does in a stretch of a shift.
 *
 * @example
 * ```ts
 * stretchLabour({ lasts: "9 h", persons: 4, availability: "75 %", shiftShare: "80 %" }).labour.toString(); // "21.6 h"
 * ```
 */
export const stretchLabour = /* @__PURE__ */ calculation({
  id: "planning.stretch-labour",
  title: "Labour in a stretch of a shift",
  given: {
    lasts: { is: "time", unit: "h", symbol: "T", says: "how long the stretch lasts", atLeast: 0 },
    persons: { is: "count", symbol: "c", says: "persons at this work", above: 0 },
    availability: { is: "ratio", unit: "%", symbol: "a", says: "share of the crew that is there", above: 0, atMost: 1 },
    shiftShare: { is: "ratio", unit: "%", symbol: "e", says: "share of the shift at the tool", above: 0, atMost: 1 },
  },
  steps: {
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", formula: "lasts * persons * availability * shiftShare", basis: arithmetic },
  },
});
