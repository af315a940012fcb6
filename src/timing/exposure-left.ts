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
import { exposureShare } from "./exposure-share.js";
import { say } from "./refusals.js";

/** How long a barrier will have been bare, and how far that is from its limit. */
export interface ExposureLeft {
  readonly bare: Quantity<"time">;
  readonly left: Quantity<"time">;
  readonly used: Quantity<"ratio">;
  readonly state: "within the limit" | "close to the limit" | "over the limit";
  /** The day to warn on, and the last day it may be bare. */
  readonly warnOn: string;
  readonly lastDay: string;
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    coatedOn: dayField("day the barrier was coated"),
    claddingOn: dayField("day it is clad"),
    exposureLimit: quantityField("time", { says: "longest time it may be bare, from its label", above: 0, atMost: "3660 d" }),
    warnShare: z.optional(quantityField("ratio", { says: "share of the limit at which to warn", above: 0, atMost: 1 })),
  }));

/**
 * How long a barrier stays bare until it is clad, against the limit on its label; a warning comes at 80 % of it.
 *
 * @example
 * ```ts
 * const bare = exposureLeft({ coatedOn: "2026-03-01", claddingOn: "2026-04-25", exposureLimit: "60 d" });
 * bare.bare.toString(); // "55 d"
 * bare.state; // "close to the limit"
 * bare.warnOn; // "2026-04-18"
 * ```
 */
export const exposureLeft = /* @__PURE__ */ composed({
  id: "timing.exposure-left",
  title: "Time a bare barrier has left",
  cautions: ["The limit is that of the label and counts sun, rain and wind alike; a barrier that looks chalky or split is judged by its maker."],
  reads: /* @__PURE__ */ nested(input),
  run: ({ coatedOn, claddingOn, exposureLimit, warnShare }, work): ExposureLeft => {
    const from = readDate(coatedOn, { path: ["coatedOn"], says: "day the barrier was coated" });
    const until = readDate(claddingOn, { path: ["claddingOn"], says: "day it is clad" });
    refuseAll(troublesIn([from, until]), work);
    const days = daysBetween(from as CalendarDay, until as CalendarDay);
    if (days < 0) work.refuse({ code: "refused", path: ["claddingOn"], given: claddingOn, wanted: say("notBefore", { other: coatedOn }) });
    const bare = times(quantity("time", "1 d"), days);
    const { used, left, warnAfter } = work.part(exposureShare, { bare, exposureLimit, ...(warnShare === undefined ? {} : { warnShare }) }).answers;
    const state = compare(bare, exposureLimit) > 0 ? "over the limit" : compare(bare, warnAfter) >= 0 ? "close to the limit" : "within the limit";
    return { bare, left, used, state, warnOn: dayAfter(from as CalendarDay, warnAfter).toString(), lastDay: dayAfter(from as CalendarDay, exposureLimit).toString() };
  },
});
