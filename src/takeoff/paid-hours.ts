import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Hours that are paid for hours at the tool.
 *
 * @example
 * ```ts
 * paidHours({ toolHours: "70.4 h", efficiency: "80 %" }).paidHours.toString(); // "88 h"
 * ```
 */
export const paidHours = /* @__PURE__ */ calculation({
  id: "takeoff.paid-hours",
  title: "Paid hours of a task",
  given: {
    toolHours: { is: "time", unit: "h", symbol: "T", says: "hours of one person at the tool", atLeast: 0 },
    efficiency: { is: "ratio", unit: "%", symbol: "e", says: "share of paid time that is time at the tool", above: 0, atMost: 1 },
  },
  steps: {
    paidHours: { is: "time", unit: "h", symbol: "T_p", says: "paid hours of one person", formula: "toolHours / efficiency", basis: arithmetic },
  },
  cautions: ["Rates are yours: high walls, small units and many openings take longer than plain ones."],
});
