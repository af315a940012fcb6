import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Hours of one person for an area, from a rate of your own.
 *
 * @example
 * ```ts
 * areaLabour({ area: "2400 ft2", perArea: "100 ft2", hours: "22 h", factor: 1 }).labour.toString(); // "528 h"
 * ```
 */
export const areaLabour = /* @__PURE__ */ calculation({
  id: "planning.area-labour",
  title: "Labour for an area",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area to be worked on", atLeast: 0 },
    perArea: { is: "area", unit: ["ft2", "m2"], symbol: "A_p", says: "area the hours are for", above: 0 },
    hours: { is: "time", unit: "h", symbol: "T", says: "hours of one person at the tool for that much", above: 0 },
    factor: { is: "ratio", symbol: "f", says: "how many times as long it takes here as the rate says: high, cut up or small work; 1 where the rate is for such work", above: 0 },
  },
  steps: {
    share: { is: "ratio", symbol: "q", says: "how many times as much as the hours are for", formula: "area / perArea", basis: arithmetic },
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", formula: "share * hours * factor", basis: arithmetic },
  },
});
