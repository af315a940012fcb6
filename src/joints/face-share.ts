import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * The part of a face that one size of unit makes up.
 *
 * @example
 * ```ts
 * faceShare({ area: "320 ft2", share: "25 %" }).part.toString(); // "80 ft2"
 * ```
 */
export const faceShare = /* @__PURE__ */ calculation({
  id: "joints.face-share",
  title: "Part of a face made up by one size",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "whole face, openings out", above: 0 },
    share: { is: "ratio", unit: "%", symbol: "s", says: "share of the face, joints with it", above: 0, atMost: 1 },
  },
  steps: {
    part: { is: "area", unit: ["ft2", "m2"], symbol: "A_s", says: "face made up by this size, joints with it", formula: "area * share", basis: arithmetic },
  },
});
