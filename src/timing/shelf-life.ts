import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refuseAll } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { dayField } from "./clock-field.js";
import { type CalendarDay, dayAfter, daysBetween, readDate, troublesIn } from "./clock.js";
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
    shelfLife: quantityField("time", { says: "how long it keeps in an unopened pack stored dry, from the bag or pail", above: 0, atMost: "3660 d" }),
  }));

/**
 * Whether bags or pails are still good on the day they are to be used up, and the last day they are.
 *
 * @example
 * ```ts
 * const bags = shelfLife({ madeOn: "2026-01-15", useOn: "2026-09-01", shelfLife: "180 d" });
 * bags.state; // "too old"
 * bags.lastDay; // "2026-07-14"
 * ```
 */
export const shelfLife = /* @__PURE__ */ composed({
  id: "timing.shelf-life",
  title: "Whether bags last until they are used",
  cautions: ["Holds for unopened packs kept dry and free of frost. Mortar with lumps that do not fall apart between the fingers is thrown away, whatever the date."],
  reads: /* @__PURE__ */ nested(input),
  run: ({ madeOn, useOn, shelfLife: keeps }, work): ShelfLife => {
    const made = readDate(madeOn, { path: ["madeOn"], says: "day it was made" });
    const use = readDate(useOn, { path: ["useOn"], says: "day it is to be used up" });
    refuseAll(troublesIn([made, use]), work);
    const days = daysBetween(made as CalendarDay, use as CalendarDay);
    if (days < 0) work.refuse({ code: "refused", path: ["useOn"], given: useOn, wanted: say("notBefore", { other: madeOn }) });
    const ageAtUse = times(quantity("time", "1 d"), days);
    return { ageAtUse, state: compare(ageAtUse, keeps) > 0 ? "too old" : "in time", lastDay: dayAfter(made as CalendarDay, keeps) };
  },
});
