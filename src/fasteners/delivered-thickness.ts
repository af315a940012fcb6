import { calculation } from "../core/calculation.js";
import { leastDeliveredShare } from "../data/fasteners.js";

/**
 * Least thickness, without its coating, in which steel of a design thickness may be delivered.
 *
 * @example
 * ```ts
 * deliveredThickness({ designThickness: "0.0346 in" }).leastDelivered.toString(); // "0.03287 in"
 * ```
 */
export const deliveredThickness = /* @__PURE__ */ calculation({
  id: "fasteners.delivered-thickness",
  title: "Least delivered thickness of steel",
  given: {
    designThickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "design thickness of the steel, without its coating", above: 0 },
  },
  constants: {
    leastShare: { is: "ratio", unit: "%", symbol: "f", value: "95 %", says: "least share of the design thickness that may be delivered", basis: leastDeliveredShare },
  },
  steps: {
    leastDelivered: { is: "length", unit: ["in", "mm"], symbol: "t_min", says: "least thickness delivered, without coating", formula: "leastShare * designThickness", basis: leastDeliveredShare },
  },
});
