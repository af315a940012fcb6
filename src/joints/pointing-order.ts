import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Joint mortar to order: the mortar left in the tooled joints with waste, in bags.
 *
 * @example
 * ```ts
 * const order = pointingOrder({ net: "6 ft3", waste: "20 %", bagYield: "0.6 ft3" });
 * order.toOrder.toString(); // "7.2 ft3"
 * order.bags.toString(); // "12"
 * ```
 */
export const pointingOrder = /* @__PURE__ */ calculation({
  id: "joints.pointing-order",
  title: "Joint mortar to order",
  given: {
    net: { is: "volume", unit: ["ft3", "L"], symbol: "V", says: "mortar left in the tooled joints", above: 0 },
    waste: { is: "ratio", unit: "%", symbol: "w", says: "mortar dropped, struck off, stiffened or left in the bag, on top of the net", atLeast: 0, below: 1 },
    bagYield: { is: "volume", unit: ["ft3", "L"], symbol: "Y", says: "mortar that one bag gives", above: 0 },
  },
  steps: {
    toOrder: { is: "volume", unit: ["ft3", "L"], symbol: "V_o", says: "mortar with waste", formula: "net * (1 + waste)", basis: arithmetic },
    bags: { is: "count", symbol: "n", says: "whole bags to order", formula: "ceil(toOrder / bagYield)", basis: arithmetic },
  },
  cautions: ["Order all bags of one colour from one lot."],
});
