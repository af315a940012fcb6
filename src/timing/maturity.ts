import * as z from "zod/mini";
import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { clockText } from "./clock.js";
import { intervalMaturity } from "./interval-maturity.js";
import { intervalsOf, lastTogether } from "./intervals.js";
import { intervalsInput, recordInput } from "./record-input.js";
import { unshown } from "./unshown.js";

/** One interval of a history, and the maturity it brings. */
export interface MaturedInterval {
  /** When it begins; absent in a history without a clock. */
  readonly from?: string;
  readonly lasts: Quantity<"time">;
  readonly temperature: Quantity<"temperature">;
  /** What counts of the temperature over the datum; nought below it. */
  readonly counted: Quantity<"temperatureDifference">;
  readonly maturity: Quantity<"maturity">;
  /** Maturity at the end of the interval. */
  readonly total: Quantity<"maturity">;
}

/** Temperature times time over a datum. */
export interface Maturity {
  readonly datumTemperature: Quantity<"temperature">;
  readonly elapsed: Quantity<"time">;
  readonly maturity: Quantity<"maturity">;
  readonly intervals: readonly MaturedInterval[];
}

const input = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    datumTemperature: quantityField("temperature", { says: "datum of the rule, below which nothing counts", atLeast: "0 degF", atMost: "50 degF" }),
    record: z.optional(telling("record of the temperature", recordInput())),
    intervals: z.optional(telling("intervals, one after the other", intervalsInput())),
  }));

/**
 * Maturity over a record of temperatures, interval by interval, over the datum that is given: sources have it at 0, -10,
 * -11 and -11.7 degC, and figures over different datums do not compare. The solution shows one interval, the answers all.
 *
 * @example
 * ```ts
 * maturity({ datumTemperature: "-10 degC", intervals: [{ lasts: "24 h", temperature: "20 degC" }] }).maturity.toString(); // "720 degC h"
 * ```
 */
export const maturity = /* @__PURE__ */ composed({
  id: "timing.maturity",
  title: "Maturity over a record",
  reads: /* @__PURE__ */ nested(input),
  run: ({ datumTemperature, ...history }, work): Maturity => {
    const intervals = intervalsOf(history, work);
    let total: Quantity<"maturity"> | undefined;
    const matured = intervals.map(({ from, lasts, temperature, path }, index): MaturedInterval => {
      const given = { lasts, temperature, datumTemperature };
      const { counted, maturity: own } = index === 0 ? work.part(intervalMaturity, given, path).answers : unshown(intervalMaturity, given, work, path);
      total = total === undefined ? own : sum([total, own]);
      return { ...(from === undefined ? {} : { from: clockText(from) }), lasts, temperature, counted, maturity: own, total };
    });
    return { datumTemperature, elapsed: lastTogether(intervals), maturity: total ?? quantity("maturity", "0 degC h"), intervals: matured };
  },
});
