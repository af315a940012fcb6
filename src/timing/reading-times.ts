import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refuseAll } from "../core/refuse-all.js";
import { readingFrequency } from "../data/timing.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { clockField, zoneField } from "./clock-field.js";
import { type Clock, clockAfter, clockText, isBefore, readClock, timeBetween, troublesIn } from "./clock.js";
import { say } from "./refusals.js";

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    zone: zoneField(),
    from: clockField("beginning of the work"),
    until: clockField("end of the work"),
    every: quantityField("time", { says: "longest time between readings; sources differ: about 4 h (MIL-HDBK-1110), or 1 h, and 30 min on a face above 100 degF (UFGS-09971)", atLeast: "5 min", atMost: "24 h" }),
  }));

/**
 * When air, surface and humidity are read during the work: at its beginning, so often from then on, and at its end.
 *
 * @example
 * ```ts
 * readingTimes({ zone: "America/Chicago", from: "2026-06-01T07:00", until: "2026-06-01T15:30", every: "4 h" }).times;
 * // ["2026-06-01T07:00-05:00[America/Chicago]", "2026-06-01T11:00-05:00[America/Chicago]", "2026-06-01T15:00-05:00[America/Chicago]", "2026-06-01T15:30-05:00[America/Chicago]"]
 * ```
 */
export const readingTimes = /* @__PURE__ */ composed({
  id: "timing.reading-times",
  title: "When the weather is read during the work",
  cautions: ["Read again whenever the weather turns, and write down the time, the place on the wall and who read it."],
  reads: /* @__PURE__ */ nested(input),
  run: ({ zone, from, until, every }, work): { readonly times: readonly string[] } => {
    const read = [
      readClock(from, { path: ["from"], says: "beginning of the work", zone }),
      readClock(until, { path: ["until"], says: "end of the work", zone }),
    ];
    refuseAll(troublesIn(read), work);
    const [begin, end] = read as readonly Clock[] as readonly [Clock, Clock];
    if (!isBefore(begin, end)) work.refuse({ code: "refused", path: ["until"], given: until, wanted: say("mustComeAfter", { other: from }) });
    if (compare(timeBetween(begin, end), quantity("time", "48 h")) > 0) work.refuse({ code: "tooHigh", path: ["until"], given: until, wanted: say("mostHoursAfter", { hours: 48 }) });
    work.stand(readingFrequency);
    const times: string[] = [];
    for (let at = begin; isBefore(at, end); at = clockAfter(at, every, "down")) times.push(clockText(at));
    return { times: [...times, clockText(end)] };
  },
});
