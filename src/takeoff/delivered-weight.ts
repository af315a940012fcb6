import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * What an item weighs as it is delivered.
 *
 * @example
 * ```ts
 * deliveredWeight({ packs: 28, packMass: "50 lb" }).weight.toString(); // "1400 lb"
 * ```
 */
export const deliveredWeight = /* @__PURE__ */ calculation({
  id: "takeoff.delivered-weight",
  title: "Weight of an item as delivered",
  given: {
    packs: { is: "count", symbol: "n", says: "packs to order; pieces where there are no packs", atLeast: 0, whole: true },
    packMass: { is: "mass", unit: ["lb", "kg"], symbol: "m", says: "weight of one of them as delivered", above: 0 },
  },
  steps: {
    weight: { is: "mass", unit: ["lb", "kg"], symbol: "M", says: "weight together", formula: "packs * packMass", basis: arithmetic },
  },
});
