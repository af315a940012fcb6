import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Share of a shift that is time at the tool, breaks taken as spread evenly over it.
 *
 * @example
 * ```ts
 * shiftShare({ shift: "9 h", breaks: "1 h" }).shiftShare.to("%").toFixed(1); // "88.9"
 * ```
 */
export const shiftShare = /* @__PURE__ */ calculation({
  id: "planning.shift-share",
  title: "Share of a shift at the tool",
  given: {
    shift: { is: "time", unit: "h", symbol: "T_s", says: "shift from its beginning to its end", above: 0, atMost: "24 h" },
    breaks: { is: "time", unit: "h", symbol: "T_b", says: "breaks, lunch, setting up and cleaning up", atLeast: 0 },
  },
  steps: {
    atTool: { is: "time", unit: "h", symbol: "T_t", says: "time at the tool in a shift", formula: "shift - breaks", basis: arithmetic, above: 0 },
    shiftShare: { is: "ratio", unit: "%", symbol: "e", says: "share of the shift at the tool", formula: "atTool / shift", basis: arithmetic },
  },
});
