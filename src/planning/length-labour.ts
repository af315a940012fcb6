import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Hours of one person for a length, from a rate of your own.
 *
 * @example
 * ```ts
 * lengthLabour({ length: "120 ft", perLength: "1 ft", hours: "0.3 h", factor: 1 }).labour.toString(); // "36 h"
 * ```
 */
export const lengthLabour = /* @__PURE__ */ calculation({
  id: "planning.length-labour",
  title: "Labour for a length",
  given: {
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length to be worked on", atLeast: 0 },
    perLength: { is: "length", unit: ["ft", "m"], symbol: "l_p", says: "length the hours are for", above: 0 },
    hours: { is: "time", unit: "h", symbol: "T", says: "hours of one person at the tool for that much", above: 0 },
    factor: { is: "ratio", symbol: "f", says: "how many times as long it takes here as the rate says: high, cut up or small work; 1 where the rate is for such work", above: 0 },
  },
  steps: {
    share: { is: "ratio", symbol: "q", says: "how many times as much as the hours are for", formula: "length / perLength", basis: arithmetic },
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", formula: "share * hours * factor", basis: arithmetic },
  },
});
