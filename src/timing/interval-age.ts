import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Age that a time brings at its own ageFactor, as the time at the reference temperature that brings the same.
 *
 * @example
 * ```ts
 * intervalAge({ lasts: "6 h", ageFactor: 2 }).age.toString(); // "12 h"
 * ```
 */
export const intervalAge = /* @__PURE__ */ calculation({
  id: "timing.interval-age",
  title: "Equivalent age of one interval",
  given: {
    lasts: { is: "time", unit: "h", symbol: "t", says: "how long the interval lasts", atLeast: 0 },
    ageFactor: { is: "ratio", symbol: "f", says: "how many times as fast it goes as at the reference", atLeast: 0 },
  },
  steps: {
    age: { is: "time", unit: "h", symbol: "t_e", says: "equivalent age at the reference temperature", formula: "lasts * ageFactor", basis: arithmetic },
  },
});
