import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Path, Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { refuseAll } from "../core/refuse-all.js";
import { holdPractice, usualHolds } from "../data/timing.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, readOnly, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { ageFactorsBy } from "./age-factors.js";
import { walkToAge } from "./age-walk.js";
import { clockField } from "./clock-field.js";
import { type Clock, clockAfter, clockText, readClock, troublesIn } from "./clock.js";
import { endOf, intervalsFrom, recordIntervals } from "./intervals.js";
import { ageRuleInput, recordInput } from "./record-input.js";
import { say } from "./refusals.js";

/** The works that wait for something to set or to dry. */
export type WaitingWork = keyof typeof usualHolds;

/** When one work may be done. A time is absent where it was not given, or where the record ends before it. */
export interface WorkWindow {
  readonly work: WaitingWork;
  readonly done: string;
  readonly earliest?: string;
  readonly typical?: string;
  readonly latest?: string;
  /** What is looked for before the clock is believed. */
  readonly test: string;
}

/** When each work may be done under a record or a forecast. */
export interface WorkWindows {
  readonly rule: "doubling" | "Arrhenius";
  readonly windows: readonly WorkWindow[];
}

const hold = (says: string): ReturnType<typeof quantityField<"time">> => quantityField("time", { says, above: 0, atMost: "3660 d" });

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    ...ageRuleInput(),
    record: telling("record of the temperature", recordInput()),
    holds: readOnly(
      telling("waits that are asked about", z.array(
        z.strictObject({
          work: telling("work that has to wait", z.enum(["tape", "coat", "ledger", "pointing", "tooling", "uncovering", "brushing", "washing"])),
          done: clockField("when the work before was done"),
          least: hold("least wait at the reference temperature"),
          typical: z.optional(hold("usual wait at the reference temperature")),
          most: z.optional(hold("longest wait at the reference temperature")),
        }),
      )),
    ),
  }));

/**
 * When the works that wait may be done under a record or a forecast: coating over tape, the next coat, taking the ledger away,
 * pointing, tooling, leaving joints without cover in rain, brushing and washing; each with what to look for before the clock is
 * believed. Waits are those of the data sheet; usual ones at 70 degF stand in `usualHolds`.
 *
 * @example
 * ```ts
 * const hours = [70, 70, 70, 70].map((degrees, index) => ({ at: `2026-06-01T${String(8 + index).padStart(2, "0")}:00`, temperature: `${degrees} degF` }));
 * const { windows } = workWindows({
 *   rule: "doubling", reference: "70 degF", record: { zone: "America/Chicago", every: "1 h", readingIs: "momentary", readings: hours },
 *   holds: [{ work: "tooling", done: "2026-06-01T08:30[America/Chicago]", least: "20 min", most: "90 min" }],
 * });
 * windows[0].earliest; // "2026-06-01T08:50-05:00[America/Chicago]"
 * windows[0].latest; // "2026-06-01T10:00-05:00[America/Chicago]"
 * windows[0].test; // "the joint takes a thumbprint and leaves no paste on the thumb"
 * ```
 */
export const workWindows = /* @__PURE__ */ composed({
  id: "timing.work-windows",
  title: "When the works that wait may be done",
  cautions: ["Test before the clock: the window says when to look, the wall says when to begin. The data sheet comes before both."],
  reads: /* @__PURE__ */ nested(input),
  run: ({ rule, activation, reference, record, holds }, work): WorkWindows => {
    const intervals = recordIntervals(record, work);
    const clocks = holds.map(({ done }, index) => readClock(done, { path: ["holds", index, "done"], says: "when the work before was done", zone: record.zone }));
    refuseAll([...troublesIn(clocks), ...holds.flatMap((one, index) => outOfOrder(one, ["holds", index]))], work);
    const factors = ageFactorsBy({ rule, activation, reference }, work);
    work.stand(holdPractice);
    const windows = holds.map(({ work: name, least, typical, most }, index): WorkWindow => {
      const done = clocks[index] as Clock;
      const from = intervalsFrom(done, intervals, work, ["holds", index, "done"]);
      const at = (wait: Quantity<"time"> | undefined, way: "up" | "down"): string | undefined => {
        const walk = wait === undefined ? undefined : walkToAge(wait, from, factors, work);
        if (walk?.reached === false) work.caution(`The record ends ${clockText(endOf(intervals))}, before ${name} is through its window.`);
        return walk?.reached === true ? clockText(clockAfter(done, walk.time, way)) : undefined;
      };
      return { work: name, done: clockText(done), ...present({ earliest: at(least, "up"), typical: at(typical, "up"), latest: at(most, "down") }), test: usualHolds[name].test };
    });
    return { rule, windows };
  },
});

/** What is there of some texts. */
function present<K extends string>(texts: Readonly<Record<K, string | undefined>>): { readonly [Key in K]?: string } {
  return Object.fromEntries(Object.entries(texts).filter(([, text]) => text !== undefined)) as { readonly [Key in K]?: string };
}

interface Waits {
  readonly least: Quantity<"time">;
  readonly typical?: Quantity<"time"> | undefined;
  readonly most?: Quantity<"time"> | undefined;
}

/** What is wrong with waits that do not rise. */
function outOfOrder({ least, typical, most }: Waits, path: Path): readonly Trouble[] {
  const low = typical !== undefined && compare(typical, least) < 0;
  const high = most !== undefined && compare(most, typical ?? least) < 0;
  return [
    ...(low ? [{ code: "tooLow" as const, path: [...path, "typical"], given: typical.toString(), wanted: say("typicalUnderLeast", { least }) }] : []),
    ...(high ? [{ code: "tooLow" as const, path: [...path, "most"], given: most.toString(), wanted: say("mostUnderWait", { wait: typical ?? least }) }] : []),
  ];
}
