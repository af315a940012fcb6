import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { freezingPoint, frostStrength } from "../data/timing.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { ageFactorsBy } from "./age-factors.js";
import { ageOver, walkToAge } from "./age-walk.js";
import { type Clock, clockBefore, clockText, isBefore } from "./clock.js";
import { type ClockInterval, endOf, recordIntervals } from "./intervals.js";
import { recordInput, type RecordRead } from "./record-input.js";

/** The last unit by one rule. */
export interface LastUnitByRule {
  readonly rule: "doubling" | "Arrhenius";
  /** Absent where a unit set at the beginning of the record would not be hard enough in time. */
  readonly lastUnit?: string;
  /** Age that a unit set at the beginning of the record has when the frost or the end of the record comes. */
  readonly ageFromStart: Quantity<"time">;
}

/** When the last unit of the day must be set. */
export interface LastUnitToday {
  /** The earlier of both rules; absent where one of them leaves no time: without heat, set nothing. */
  readonly lastUnit?: string;
  /** The beginning of the frost; absent where the record has none. */
  readonly freezesAt?: string;
  readonly before: "frost" | "end of the record";
  readonly byRule: readonly LastUnitByRule[];
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    record: telling("record of the temperature", recordInput()),
    cure: quantityField("time", { says: "age at the reference temperature at which a frost does no lasting harm", above: 0, atMost: "60 d" }),
    reference: quantityField("temperature", { says: "temperature that age is told for", atLeast: "40 degF", atMost: "120 degF" }),
    activation: quantityField("temperatureDifference", { says: "activation energy over the gas constant, in kelvins", atLeast: "1000 K", atMost: "10000 K" }),
  }));

/**
 * When the last unit must be set so that it has its age before the frost, by the doubling rule and by Arrhenius; the earlier
 * holds. Where the record has no frost, the age is wanted by the end of the record, since nobody knows what comes after.
 *
 * @example
 * ```ts
 * const day = [50, 50, 50, 50, 31].map((degrees, index) => ({ at: `2026-11-02T${String(8 + 2 * index).padStart(2, "0")}:00`, temperature: `${degrees} degF` }));
 * const last = lastUnitToday({
 *   record: { zone: "America/Chicago", every: "2 h", readingIs: "mean until the next", readings: day }, cure: "2 h", reference: "50 degF", activation: "5000 K",
 * });
 * last.freezesAt; // "2026-11-02T16:00-06:00[America/Chicago]"
 * last.lastUnit; // "2026-11-02T14:00-06:00[America/Chicago]"
 * ```
 */
export const lastUnitToday = /* @__PURE__ */ composed({
  id: "timing.last-unit-today",
  title: "Last unit before the frost",
  cautions: [
    "The age until a frost does no lasting harm is taken from concrete; for thin beds with polymers it only guides, and the data sheet comes first.",
    "The temperature is that of the wall and the mortar, not of the weather station; ice and frost on the wall stop the work whatever the clock says.",
  ],
  reads: /* @__PURE__ */ nested(input),
  run: ({ record, cure, reference, activation }, work): LastUnitToday => {
    work.stand(freezingPoint);
    work.stand(frostStrength);
    const intervals = recordIntervals(record, work);
    const frost = frostOf(record, intervals);
    const usable = frost === undefined ? intervals : intervals.filter(({ from }) => isBefore(from, frost));
    const end = frost ?? endOf(intervals);
    const found = (["doubling", "Arrhenius"] as const).map((rule) => {
      const factors = ageFactorsBy({ rule, reference, ...(rule === "Arrhenius" ? { activation } : {}) }, work);
      const back = walkToAge(cure, [...usable].reverse(), factors, work);
      return { rule, ageFromStart: ageOver(usable, factors, work), last: back.reached ? clockBefore(end, back.time) : undefined };
    });
    const lasts = found.flatMap(({ last }) => last ?? []);
    const [last, ...others] = lasts.length === found.length ? lasts : [];
    const earliest = others.reduce((one, other) => (one !== undefined && isBefore(other, one) ? other : one), last);
    if (earliest === undefined) work.caution("Without heat there is no time in this record to set a unit that the frost will not harm.");
    return {
      ...(earliest === undefined ? {} : { lastUnit: clockText(earliest) }),
      ...(frost === undefined ? {} : { freezesAt: clockText(frost) }),
      before: frost === undefined ? "end of the record" : "frost",
      byRule: found.map(({ rule, ageFromStart, last: own }) => ({ rule, ...(own === undefined ? {} : { lastUnit: clockText(own) }), ageFromStart })),
    };
  },
});

/** When the frost begins: where the first reading below freezing stands or, of readings at a moment, the one before it. */
function frostOf({ readings, readingIs }: RecordRead, intervals: readonly ClockInterval[]): Clock | undefined {
  const freezing = quantity("temperature", "32 degF");
  const index = readings.findIndex(({ temperature }) => compare(temperature, freezing) < 0);
  if (index < 0) return undefined;
  const at = readingIs === "momentary" ? Math.max(0, index - 1) : index;
  return intervals[at]?.from ?? endOf(intervals);
}
