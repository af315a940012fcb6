import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { walkToAge } from "./age-walk.js";
import { clockField, zoneField } from "./clock-field.js";
import { type Clock, clockAfter, clockText, readClock, troublesIn } from "./clock.js";
import { endOf, intervalsFrom, recordIntervals } from "./intervals.js";
import { ageRuleInput, recordInput } from "./record-input.js";
import { ageFactorAt, ageFactorsBy } from "./age-factors.js";
import { say } from "./refusals.js";
import { timeByAgeFactor } from "./time-by-age-factor.js";

/** When an age is reached. */
export interface TimeToAge {
  readonly rule: "doubling" | "Arrhenius";
  readonly time: Quantity<"time">;
  /** The clock then; absent where nothing says when it began. */
  readonly reachedAt?: string;
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    age: quantityField("time", { says: "age wanted, at the reference temperature", above: 0, atMost: "3660 d" }),
    ...ageRuleInput(),
    temperature: z.optional(quantityField("temperature", { says: "temperature it stays at", atLeast: "32 degF", atMost: "120 degF" })),
    record: z.optional(telling("record of the temperature", recordInput())),
    start: z.optional(clockField("when it begins")),
    zone: zoneField(),
  }));

/**
 * When an age is reached: at a temperature that stays, or under a forecast; a forecast that ends before is no answer.
 *
 * @example
 * ```ts
 * const wait = timeToAge({ age: "24 h", rule: "doubling", reference: "70 degF", temperature: "52 degF", start: "2026-03-07T08:00[America/Chicago]" });
 * wait.time.to("h").toFixed(3); // "48.000"
 * wait.reachedAt; // "2026-03-09T09:00-05:00[America/Chicago]"
 * ```
 */
export const timeToAge = /* @__PURE__ */ composed({
  id: "timing.time-to-age",
  title: "Time until an age is reached",
  reads: /* @__PURE__ */ nested(input),
  run: ({ age, rule, activation, reference, temperature, record, start: startText, zone }, work): TimeToAge => {
    const by = { rule, activation, reference };
    const start = startText === undefined ? undefined : readClock(startText, { path: ["start"], says: "when it begins", zone: zone ?? record?.zone });
    refuseAll(troublesIn([start]), work);
    const told = (time: Quantity<"time">, from: Clock | undefined): TimeToAge => (from === undefined ? { rule, time } : { rule, time, reachedAt: clockText(clockAfter(from, time, "up")) });
    if (temperature !== undefined && record === undefined) {
      const ageFactor = ageFactorAt(by, temperature, work);
      return told(work.part(timeByAgeFactor, { timeAtReference: age, ageFactor }).answers.time, start as Clock | undefined);
    }
    if (record === undefined || temperature !== undefined) {
      const given = record === undefined ? "" : "temperature and record";
      return work.refuse({ code: "either", path: ["warmth"], given, wanted: { kind: "exactlyOne", of: ["temperature", "record"] } });
    }
    const all = recordIntervals(record, work);
    const from = (start as Clock | undefined) ?? all[0]?.from ?? endOf(all);
    const walk = walkToAge(age, intervalsFrom(from, all, work, ["start"]), ageFactorsBy(by, work), work);
    if (!walk.reached) {
      work.refuse(refusal(["record"], say("ageReachedBy", { reached: walk.age, age, time: clockText(endOf(all)) }), say("recordEndsBeforeAge"), "noAnswer"));
    }
    return told(walk.time, from);
  },
});
