import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * How long takes at its own pace what takes so long at the reference temperature: a life, a wait, what is left of an age.
 *
 * @example
 * ```ts
 * timeByAgeFactor({ timeAtReference: "4 h", ageFactor: 2 }).time.toString(); // "2 h"
 * ```
 */
export const timeByAgeFactor = /* @__PURE__ */ calculation({
  id: "timing.time-by-age-factor",
  title: "Time at another pace than at the reference",
  given: {
    timeAtReference: { is: "time", unit: "h", symbol: "t_r", says: "time it takes at the reference temperature", above: 0 },
    ageFactor: { is: "ratio", symbol: "f", says: "how many times as fast as at the reference", above: 0 },
  },
  steps: {
    time: { is: "time", unit: "h", symbol: "t", says: "time it takes at this pace", formula: "timeAtReference / ageFactor", basis: arithmetic },
  },
});
