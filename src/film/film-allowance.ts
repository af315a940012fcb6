import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Film that a rule still allows: a share of what is specified.
 *
 * @example
 * ```ts
 * filmAllowance({ specified: "8 mil", share: "80 %" }).allowed.toString(); // "6.4 mil"
 * ```
 */
export const filmAllowance = /* @__PURE__ */ calculation({
  id: "film.film-allowance",
  title: "Film that a rule allows",
  given: {
    specified: { is: "length", unit: ["mil", "um"], symbol: "t_s", says: "film specified", above: 0 },
    share: { is: "ratio", unit: "%", symbol: "k", says: "share of it that the rule allows", above: 0, atMost: 2 },
  },
  steps: {
    allowed: { is: "length", unit: ["mil", "um"], symbol: "t_a", says: "film allowed", formula: "specified * share", basis: arithmetic },
  },
});
