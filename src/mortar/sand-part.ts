import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Parts of sand to one part of cement, from the ratio of sand to cement and lime together.
 *
 * @example
 * ```ts
 * sandPart({ limePart: "1-1/4", sandRatio: 3 }).sandPart.toString(); // "6.75"
 * ```
 */
export const sandPart = /* @__PURE__ */ calculation({
  id: "mortar.sand-part",
  title: "Parts of sand",
  given: {
    limePart: { is: "ratio", symbol: "l", says: "parts of lime to one of cement, by bulk volume", atLeast: 0 },
    sandRatio: { is: "ratio", symbol: "q", says: "sand to cement and lime together, by bulk volume", above: 0 },
  },
  steps: {
    sandPart: { is: "ratio", symbol: "s", says: "parts of sand to one of cement", formula: "sandRatio * (1 + limePart)", basis: arithmetic },
  },
});
