import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { exposureWarning } from "../data/timing.js";

/**
 * Share of its exposure limit that a bare barrier has used, what is left, and after how long to warn.
 *
 * @example
 * ```ts
 * exposureShare({ bare: "55 d", exposureLimit: "60 d" }).used.to("%").toFixed(0); // "92"
 * ```
 */
export const exposureShare = /* @__PURE__ */ calculation({
  id: "timing.exposure-share",
  title: "Share of the exposure limit",
  given: {
    bare: { is: "time", unit: "d", symbol: "t", says: "time the barrier is bare", atLeast: 0 },
    exposureLimit: { is: "time", unit: "d", symbol: "t_x", says: "longest time it may be bare, from its label", above: 0 },
    warnShare: { is: "ratio", unit: "%", symbol: "w", says: "share of the limit at which to warn", default: "80 %", basis: exposureWarning, above: 0, atMost: 1 },
  },
  steps: {
    used: { is: "ratio", unit: "%", symbol: "f", says: "share of the limit used", formula: "bare / exposureLimit", basis: arithmetic },
    left: { is: "time", unit: "d", symbol: "t_l", says: "time left; below nought where the limit is passed", formula: "exposureLimit - bare", basis: arithmetic },
    warnAfter: { is: "time", unit: "d", symbol: "t_w", says: "time bare at which to warn", formula: "warnShare * exposureLimit", basis: arithmetic },
  },
});
