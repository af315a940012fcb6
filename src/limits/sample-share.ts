import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Share of a sample that is as it should be: screws in steel, weeps open, movement joints clear of mortar, units that ring
 * sound.
 *
 * @example
 * ```ts
 * const weeps = sampleShare({ looked: 40, good: 38 });
 * weeps.share.toString(); // "95 %"
 * weeps.bad.toString(); // "2"
 * ```
 */
export const sampleShare = /* @__PURE__ */ calculation({
  id: "limits.sample-share",
  title: "Share of a sample that is as it should be",
  given: {
    looked: { is: "count", symbol: "n", says: "places looked at, or all there should be", atLeast: 1, whole: true },
    good: { is: "count", symbol: "n_g", says: "of these, places that are as they should be", atLeast: 0, whole: true },
  },
  steps: {
    bad: { is: "count", symbol: "n_b", says: "places that are not", formula: "looked - good", basis: arithmetic, atLeast: 0 },
    share: { is: "ratio", unit: "%", symbol: "f", says: "share that is as it should be", formula: "good / looked", basis: arithmetic },
    badShare: { is: "ratio", unit: "%", symbol: "f_b", says: "share that is not", formula: "bad / looked", basis: arithmetic },
  },
  cautions: ["A sample is no proof of the rest: how many places are looked at, and how many may be bad, is for the specification to say. What is found bad is put right and counted."],
});
