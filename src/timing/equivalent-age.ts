import * as z from "zod/mini";
import { telling } from "../schema/fields.js";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { nested } from "../schema/nested.js";
import { intervalAge } from "./interval-age.js";
import { clockText } from "./clock.js";
import { intervalsOf, lastTogether } from "./intervals.js";
import { ageRuleInput, intervalsInput, recordInput } from "./record-input.js";
import { ageFactorsBy } from "./age-factors.js";
import { unshown } from "./unshown.js";

/** One interval of a history, and the age it brings. */
export interface AgedInterval {
  /** When it begins; absent in a history without a clock. */
  readonly from?: string;
  readonly lasts: Quantity<"time">;
  readonly temperature: Quantity<"temperature">;
  /** How many times as fast as at the reference; nought below freezing. */
  readonly ageFactor: Quantity<"ratio">;
  readonly age: Quantity<"time">;
  /** Age at the end of the interval. */
  readonly total: Quantity<"time">;
}

/** The age of something that hardens, as the time at the reference temperature that would bring the same. */
export interface EquivalentAge {
  readonly rule: "doubling" | "Arrhenius";
  readonly reference: Quantity<"temperature">;
  readonly elapsed: Quantity<"time">;
  readonly age: Quantity<"time">;
  /** Time below freezing, which counts for nothing. */
  readonly frozen: Quantity<"time">;
  readonly intervals: readonly AgedInterval[];
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    ...ageRuleInput(),
    record: z.optional(telling("record of the temperature", recordInput())),
    intervals: z.optional(telling("intervals, one after the other", intervalsInput())),
  }));

/**
 * Equivalent age over a record of temperatures, interval by interval, and which rule gave it. Of the formulas, the solution
 * shows one interval; the answers hold them all.
 *
 * @example
 * ```ts
 * const age = equivalentAge({
 *   rule: "Arrhenius", activation: "5000 K", reference: "20 degC",
 *   intervals: [{ lasts: "6 h", temperature: "22 degC" }, { lasts: "6 h", temperature: "18 degC" }],
 * });
 * age.intervals[0].age.to("h").toFixed(3); // "6.735"
 * age.elapsed.toString(); // "12 h"
 * ```
 */
export const equivalentAge = /* @__PURE__ */ composed({
  id: "timing.equivalent-age",
  title: "Equivalent age over a record",
  reads: /* @__PURE__ */ nested(input),
  run: ({ rule, activation, reference, ...history }, work): EquivalentAge => {
    const intervals = intervalsOf(history, work);
    const ageFactors = ageFactorsBy({ rule, activation, reference }, work);
    let total = quantity("time", "0 h");
    const aged = intervals.map(({ from, lasts, temperature, path }): AgedInterval => {
      const ageFactor = ageFactors(temperature, path);
      const { age } = unshown(intervalAge, { lasts, ageFactor }, work, path);
      total = sum([total, age]);
      return { ...(from === undefined ? {} : { from: clockText(from) }), lasts, temperature, ageFactor, age, total };
    });
    const freezing = quantity("temperature", "32 degF");
    const cold = aged.filter(({ temperature }) => compare(temperature, freezing) < 0).map(({ lasts }) => lasts);
    const elapsed = lastTogether(intervals);
    const frozen = cold.length === 0 ? subtract(elapsed, elapsed) : sum(cold);
    if (cold.length > 0) work.caution("Time below freezing counts for nothing here; what froze before it was hard enough is not mended by warmth.");
    return { rule, reference, elapsed, age: total, frozen, intervals: aged };
  },
});
