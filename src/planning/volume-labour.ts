import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Hours of one person for a volume, from a rate of your own.
 *
 * @example
 * ```ts
 * volumeLabour({ volume: "1000 ft3", perVolume: "200 ft3", hours: "8 h", factor: 1 }).labour.toString(); // "40 h"
 * ```
 */
export const volumeLabour = /* @__PURE__ */ calculation({
  id: "planning.volume-labour",
  title: "Labour for a volume",
  given: {
    volume: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "volume to be worked on", atLeast: 0 },
    perVolume: { is: "volume", unit: ["ft3", "L"], symbol: "V_p", says: "volume the hours are for", above: 0 },
    hours: { is: "time", unit: "h", symbol: "T", says: "hours of one person at the tool for that much", above: 0 },
    factor: { is: "ratio", symbol: "f", says: "how many times as long it takes here as the rate says: high, cut up or small work; 1 where the rate is for such work", above: 0 },
  },
  steps: {
    share: { is: "ratio", symbol: "q", says: "how many times as much as the hours are for", formula: "volume / perVolume", basis: arithmetic },
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", formula: "share * hours * factor", basis: arithmetic },
  },
});
