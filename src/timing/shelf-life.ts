import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refuseAll } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { dayField } from "./clock-field.js";
import { type CalendarDay, dayAfter, daysBetween, monthsAfter, readDate, troublesIn } from "./clock.js";
import { say } from "./refusals.js";

/** How old bags or pails will be when they are used, and the last day they may be. */
export interface ShelfLife {
  readonly ageAtUse: Quantity<"time">;
  readonly state: "in time" | "too old";
  readonly lastDay: string;
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    madeOn: dayField("day it was made, from the bag or pail"),
    useOn: dayField("day it is to be used up"),
    shelfLife: z.optional(quantityField("time", { says: "how long it keeps in an unopened pack stored dry, from the bag or pail", above: 0, atMost: "3660 d" })),
    shelfMonths: z.optional(quantityField("count", { says: "months by the calendar that it keeps so, where the bag or pail counts in months", whole: true, atLeast: "1", atMost: "120" })),
  }));

/**
 * Whether bags or pails are still good on the day they are to be used up, and the last day they are. Months end on the same
 * day of their month, or on its last where it has none such.
 *
 * @example
 * ```ts
 * const bags = shelfLife({ madeOn: "2026-01-15", useOn: "2026-09-01", shelfLife: "180 d" });
 * bags.state; // "too old"
 * bags.lastDay; // "2026-07-14"
 * shelfLife({ madeOn: "2026-01-15", useOn: "2026-09-01", shelfMonths: 9 }).lastDay; // "2026-10-15"
 * ```
 */
export const shelfLife = /* @__PURE__ */ composed({
  id: "timing.shelf-life",
  title: "Whether bags last until they are used",
  cautions: ["Holds for unopened packs kept dry and free of frost. Mortar with lumps that do not fall apart between the fingers is thrown away, whatever the date."],
  reads: /* @__PURE__ */ nested(input),
  run: ({ madeOn, useOn, shelfLife: keeps, shelfMonths: months }, work): ShelfLife => {
    const made = readDate(madeOn, { path: ["madeOn"], says: "day it was made" });
    const use = readDate(useOn, { path: ["useOn"], says: "day it is to be used up" });
    if ((keeps === undefined) === (months === undefined)) {
      work.problem({ code: "either", path: ["keeps"], given: keeps === undefined ? "" : "shelfLife and shelfMonths", wanted: { kind: "exactlyOne", of: ["shelfLife", "shelfMonths"] } });
    }
    refuseAll(troublesIn([made, use]), work);
    const days = daysBetween(made as CalendarDay, use as CalendarDay);
    if (days < 0) work.refuse({ code: "refused", path: ["useOn"], given: useOn, wanted: say("notBefore", { other: madeOn }) });
    const lastDay = keeps === undefined ? monthsAfter(made as CalendarDay, months as Quantity<"count">) : dayAfter(made as CalendarDay, keeps);
    return { ageAtUse: times(quantity("time", "1 d"), days), state: daysBetween(lastDay, use as CalendarDay) > 0 ? "too old" : "in time", lastDay: lastDay.toString() };
  },
});
