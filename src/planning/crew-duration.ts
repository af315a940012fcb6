import { calculation } from "../core/calculation.js";
import { arithmetic } from "../data/basis.js";
import { manDays } from "../data/planning.js";

/**
 * Person-days of a labour and the working days a crew takes for it, by how much of the crew is there and how long it works.
 *
 * @example
 * ```ts
 * const wall = crewDuration({ labour: "528 h", crew: 5, availability: "80 %", equivalent: 1 });
 * wall.personDays.toString(); // "66"
 * wall.exactDays.toString(); // "16.5"
 * wall.days.toString(); // "17"
 * ```
 */
export const crewDuration = /* @__PURE__ */ calculation({
  id: "planning.crew-duration",
  title: "Working days of a crew",
  given: {
    labour: { is: "time", unit: "h", symbol: "T_l", says: "hours of one person at the tool", above: 0 },
    crew: { is: "count", symbol: "c", says: "persons in the crew who do this work", above: 0 },
    availability: { is: "ratio", unit: "%", symbol: "a", says: "share of the crew that is there, after absence, other work and errands", above: 0, atMost: 1 },
    equivalent: { is: "ratio", symbol: "m", says: "person-days that one person works in a day", above: 0, atMost: 3 },
    personDay: { is: "time", unit: "h", symbol: "T_d", says: "hours of a person-day", above: 0, atMost: "24 h", default: "8 h", basis: manDays },
  },
  steps: {
    personDays: { is: "count", symbol: "M", says: "person-days", formula: "labour / personDay", basis: manDays },
    aDay: { is: "count", symbol: "r", says: "person-days that the crew works in a day", formula: "crew * availability * equivalent", basis: manDays },
    exactDays: { is: "count", symbol: "D", says: "working days before they are rounded up", formula: "personDays / aDay", basis: manDays },
    days: { is: "count", symbol: "D_w", says: "whole working days", formula: "ceil(exactDays)", basis: arithmetic },
  },
  cautions: ["Days of weather, waiting and curing are not in it."],
});
