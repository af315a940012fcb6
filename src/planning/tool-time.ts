import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { manDays } from "../data/planning.js";

/**
 * What share of the paid time is time at the tool, and how many person-days of 8 h a day of this length counts for.
 *
 * @example
 * ```ts
 * const day = toolTime({ workday: "10 h", lunch: "1 h", travel: "1 h", breaks: "0.5 h", paid: "9 h" });
 * day.atTool.toString(); // "7.5 h"
 * day.equivalent.toString(); // "0.9375"
 * day.efficiency.to("%").toFixed(1); // "83.3"
 * ```
 */
export const toolTime = /* @__PURE__ */ calculation({
  id: "planning.tool-time",
  title: "Time at the tool in a day",
  given: {
    workday: { is: "time", unit: "h", symbol: "T_w", says: "day from leaving to coming back", above: 0, atMost: "24 h" },
    lunch: { is: "time", unit: "h", symbol: "T_u", says: "lunch", atLeast: 0 },
    travel: { is: "time", unit: "h", symbol: "T_v", says: "travel and carrying to the place of work", atLeast: 0 },
    breaks: { is: "time", unit: "h", symbol: "T_b", says: "breaks, setting up and cleaning up", atLeast: 0 },
    paid: { is: "time", unit: "h", symbol: "T_p", says: "time that is paid for a day", above: 0, atMost: "24 h" },
    personDay: { is: "time", unit: "h", symbol: "T_d", says: "hours of a person-day", above: 0, atMost: "24 h", default: "8 h", basis: manDays },
  },
  steps: {
    atTool: { is: "time", unit: "h", symbol: "T_t", says: "time at the tool in a day", formula: "workday - lunch - travel - breaks", basis: manDays, above: 0 },
    notAtTool: { is: "time", unit: "h", symbol: "T_n", says: "paid time that is not at the tool; below nought more is worked than paid", formula: "paid - atTool", basis: arithmetic, atLeast: 0 },
    efficiency: { is: "ratio", unit: "%", symbol: "e", says: "share of paid time that is time at the tool", formula: "atTool / paid", basis: arithmetic },
    equivalent: { is: "ratio", symbol: "m", says: "person-days that one person works in a day", formula: "atTool / personDay", basis: manDays },
  },
});
