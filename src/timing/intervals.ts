import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { type Clock, clockAfter, clockText, isBefore, timeBetween } from "./clock.js";
import { meanOfTwo } from "./mean-of-two.js";
import type { IntervalsRead, RecordRead } from "./record-input.js";
import { readReadings } from "./record.js";
import { say } from "./refusals.js";
import { unshown } from "./unshown.js";

/** A stretch of time at one temperature; `from` where there is a clock. */
export interface Interval {
  readonly from?: Clock;
  readonly lasts: Quantity<"time">;
  readonly temperature: Quantity<"temperature">;
  /** Where it stands in the input. */
  readonly path: Path;
}

/** An interval of a record by the clock. */
export interface ClockInterval extends Interval {
  readonly from: Clock;
}

/** The intervals of a record: between readings at a moment the mean of both, otherwise each reading until the next. */
export function recordIntervals(record: RecordRead, work: Work, path: Path = ["record"]): readonly ClockInterval[] {
  const readings = readReadings(record, work, path);
  const momentary = record.readingIs === "momentary";
  return readings.flatMap(({ at: from, temperature }, index): ClockInterval[] => {
    const at: Path = [...path, "readings", index];
    if (!momentary) return [{ from, lasts: record.every, temperature, path: at }];
    const next = readings[index + 1];
    return next === undefined ? [] : [{ from, lasts: record.every, temperature: unshown(meanOfTwo, { one: temperature, other: next.temperature }, work, at).mean, path: at }];
  });
}

/** The intervals of whichever was given: a record by the clock, or a history without one. */
export function intervalsOf({ record, intervals }: { readonly record?: RecordRead | undefined; readonly intervals?: IntervalsRead | undefined }, work: Work): readonly Interval[] {
  if (record !== undefined && intervals === undefined) return recordIntervals(record, work);
  if (intervals === undefined || record !== undefined) {
    const given = record === undefined ? "" : "record and intervals";
    return work.refuse({ code: "either", path: ["history"], given, wanted: { kind: "exactlyOne", of: ["record", "intervals"] } });
  }
  if (intervals.length === 0 || intervals.length > 10_000) work.refuse(refusal(["intervals"], common("counted", { count: intervals.length, of: "intervals" }), common("fromOneTo", { most: 10_000 })));
  return intervals.map((one, index) => ({ ...one, path: ["intervals", index] }));
}

/** When the last interval ends. */
export function endOf(intervals: readonly ClockInterval[]): Clock {
  const last = intervals.at(-1);
  if (last === undefined) throw new Error("a record has an interval");
  return clockAfter(last.from, last.lasts, "down");
}

/** How long the intervals last together. */
export function lastTogether(intervals: readonly Interval[]): Quantity<"time"> {
  return sum(intervals.map(({ lasts }) => lasts));
}

/** What is left of a record from a time on; refused where the time does not lie within the record. */
export function intervalsFrom(start: Clock, intervals: readonly ClockInterval[], work: Work, path: Path): readonly ClockInterval[] {
  const left = intervals.flatMap((interval): ClockInterval[] => {
    if (!isBefore(interval.from, start)) return [interval];
    const gone = timeBetween(interval.from, start);
    return compare(gone, interval.lasts) < 0 ? [{ ...interval, from: start, lasts: subtract(interval.lasts, gone) }] : [];
  });
  const [first] = intervals;
  if (first === undefined || left.length === 0 || isBefore(start, first.from)) {
    const wanted = first === undefined ? say("withinARecord") : say("withinRecord", { from: clockText(first.from), until: clockText(endOf(intervals)) });
    work.refuse(refusal(path, clockText(start), wanted));
  }
  return left;
}
