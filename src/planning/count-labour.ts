import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Hours of one person for so many pieces, from a rate of your own.
 *
 * @example
 * ```ts
 * countLabour({ count: 75, perCount: 15, hours: "16 h", factor: 1 }).labour.toString(); // "80 h"
 * ```
 */
export const countLabour = /* @__PURE__ */ calculation({
  id: "planning.count-labour",
  title: "Labour for so many pieces",
  given: {
    count: { is: "count", symbol: "n", says: "pieces to be worked on", atLeast: 0 },
    perCount: { is: "count", symbol: "n_p", says: "pieces the hours are for", above: 0 },
    hours: { is: "time", unit: "h", symbol: "T", says: "hours of one person at the tool for that much", above: 0 },
    factor: { is: "ratio", symbol: "f", says: "how many times as long it takes here as the rate says: high, cut up or small work; 1 where the rate is for such work", above: 0 },
  },
  steps: {
    share: { is: "ratio", symbol: "q", says: "how many times as much as the hours are for", formula: "count / perCount", basis: arithmetic },
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", formula: "share * hours * factor", basis: arithmetic },
  },
});
