import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Share of the readings that lie below the film specified.
 *
 * @example
 * ```ts
 * shortShare({ short: 2, readings: 15 }).share.toString(); // "13.33333333 %"
 * ```
 */
export const shortShare = /* @__PURE__ */ calculation({
  id: "film.short-share",
  title: "Share of short readings",
  given: {
    short: { is: "count", symbol: "n_s", says: "readings below the film specified", atLeast: 0, whole: true },
    readings: { is: "count", symbol: "n", says: "all readings", atLeast: 1, whole: true },
  },
  steps: {
    share: { is: "ratio", unit: "%", symbol: "k", says: "share of the readings that are short", formula: "short / readings", basis: arithmetic, atMost: 1 },
  },
});
