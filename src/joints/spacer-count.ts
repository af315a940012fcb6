import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Spacers to have on site for a number of units, where part of them is pulled and used again.
 *
 * @example
 * ```ts
 * spacerCount({ units: 936, spacersPerUnit: 4, reuseShare: "50 %" }).spacers.toString(); // "1872"
 * ```
 */
export const spacerCount = /* @__PURE__ */ calculation({
  id: "joints.spacer-count",
  title: "Spacers",
  given: {
    units: { is: "count", symbol: "n", says: "units to be set", above: 0 },
    spacersPerUnit: { is: "count", symbol: "s", says: "spacers set for each unit", above: 0 },
    reuseShare: { is: "ratio", unit: "%", symbol: "f", says: "share of the spacers that is pulled and set again", atLeast: 0, below: 1 },
  },
  steps: {
    net: { is: "count", symbol: "n_s", says: "spacers that are set, new and used", formula: "units * spacersPerUnit", basis: arithmetic },
    spacers: { is: "count", symbol: "n_n", says: "whole spacers to have", formula: "ceil(net * (1 - reuseShare))", basis: arithmetic },
  },
});
