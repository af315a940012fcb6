import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { crewDuration } from "./crew-duration.js";
import { labourOf, rateInput } from "./task.js";
import { toolTime } from "./tool-time.js";

/** One task and the hours of one person for it. */
export interface TaskLabour {
  readonly name: string;
  readonly labour: Quantity<"time">;
}

/** How long a crew takes, and what part of the time that is paid is time at the tool. */
export interface CrewDays {
  readonly tasks: readonly TaskLabour[];
  readonly labour: Quantity<"time">;
  readonly personDays: Quantity<"count">;
  /** Time at the tool in a day, and its share of the time that is paid. */
  readonly atTool: Quantity<"time">;
  readonly efficiency: Quantity<"ratio">;
  /** Person-days that one person works in a day. */
  readonly equivalent: Quantity<"ratio">;
  /** Working days before they are rounded up, and whole ones: one round-up over all tasks. */
  readonly exactDays: Quantity<"count">;
  readonly days: Quantity<"count">;
}

const time = (says: string, above = false): ReturnType<typeof quantityField<"time">> => quantityField("time", { says, atMost: "24 h", ...(above ? { above: 0 } : { atLeast: 0 }) });

/** A working day: how long, what is taken off it, and what is paid. */
export const dayInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    workday: time("day from leaving to coming back", true),
    lunch: time("lunch"),
    travel: time("travel and carrying to the place of work"),
    breaks: time("breaks, setting up and cleaning up"),
    paid: time("time that is paid for a day", true),
  }));

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    tasks: readOnly(telling("tasks of the crew", z.array(z.strictObject({ name: telling("name of the task", z.string()), rate: telling("how much is to be worked on, and the rate for it", rateInput()) })))),
    day: telling("what a day of the crew is made of", dayInput()),
    crew: quantityField("count", { says: "persons in the crew who do this work", above: 0, atMost: 1000 }),
    availability: quantityField("ratio", { says: "share of the crew that is there", above: 0, atMost: 1 }),
  }));

/**
 * Person-days, the share of paid time that is time at the tool, and the working days of a crew, from areas and rates of your own.
 *
 * @example
 * ```ts
 * const wall = crewDays({
 *   tasks: [{ name: "setting", rate: { of: "area", amount: "2400 ft2", per: "100 ft2", hours: "22 h", factor: 1 } }],
 *   day: { workday: "10 h", lunch: "1 h", travel: "0.5 h", breaks: "0.5 h", paid: "9 h" }, crew: 5, availability: "80 %",
 * });
 * wall.personDays.toString(); // "66"
 * wall.efficiency.to("%").toFixed(1); // "88.9"
 * wall.days.toString(); // "17"
 * ```
 */
export const crewDays = /* @__PURE__ */ composed({
  id: "planning.crew-days",
  title: "Person-days and days of a crew",
  reads: /* @__PURE__ */ nested(input),
  cautions: ["Rates are those of your own records; a rate read or heard elsewhere is for a first look. Keep hours by task and feed the next bid."],
  run: ({ tasks, day, crew, availability }, work): CrewDays => {
    if (tasks.length === 0 || tasks.length > 1000) work.refuse(refusal(["tasks"], common("counted", { count: tasks.length, of: "tasks" }), common("fromOneTo", { most: 1000 })));
    const told = tasks.map(({ name, rate }, index): TaskLabour => ({ name, labour: labourOf(rate, work, ["tasks", index, "rate"]) }));
    const labour = sum(told.map((task) => task.labour));
    const { atTool, efficiency, equivalent } = work.part(toolTime, day, ["day"]).answers;
    const { personDays, exactDays, days } = work.part(crewDuration, { labour, crew, availability, equivalent }).answers;
    return { tasks: told, labour, personDays, atTool, efficiency, equivalent, exactDays, days };
  },
});
