import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";

/**
 * Hours of one task by the user's own rate: at the tool, and paid.
 *
 * @example
 * ```ts
 * const setting = labourHours({ work: 3.2, hoursPer: "22 h", efficiency: "80 %" });
 * setting.toolHours.toString(); // "70.4 h"
 * setting.paidHours.toString(); // "88 h"
 * ```
 */
export const labourHours = /* @__PURE__ */ calculation({
  id: "takeoff.labour-hours",
  title: "Hours of a task",
  given: {
    work: { is: "ratio", symbol: "q", says: "how often the amount that the rate is for goes into the work", atLeast: 0 },
    hoursPer: { is: "time", unit: "h", symbol: "r", says: "hours of one person at the tool for that amount, from your own records", above: 0 },
    efficiency: { is: "ratio", unit: "%", symbol: "e", says: "share of paid time that is time at the tool", above: 0, atMost: 1 },
  },
  steps: {
    toolHours: { is: "time", unit: "h", symbol: "T", says: "hours of one person at the tool", formula: "work * hoursPer", basis: arithmetic },
    paidHours: { is: "time", unit: "h", symbol: "T_p", says: "paid hours of one person", formula: "toolHours / efficiency", basis: arithmetic },
  },
  cautions: ["Rates are yours: high walls, small units and many openings take longer than plain ones."],
});
