import { type Amount, exact, exactArithmetic as arithmetic, isExact, toDecimal } from "../core/amount.js";
import { type Path, shown, type Trouble } from "../core/problems.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";
import { subtract } from "../core/quantity-arithmetic.js";
import type { Words } from "../core/wording.js";
import { say } from "./refusals.js";
import { Temporal } from "./temporal.js";

/** A time by the clock on the wall, with its zone: what is added to it is time that passes, whatever the clocks do. */
export type Clock = Temporal.ZonedDateTime;

const written = /^\d{4}-\d{2}-\d{2}[T ]\d{2}:\d{2}(?::\d{2})?(Z|[+-]\d{2}:\d{2})?(?:\[([\w/+:-]{1,60})\])?$/i;
/** How a clock time is written. */
export const example = "2026-06-01T07:30[America/Chicago]";

/** Where a clock time stands in the input, what it is, and the zone it is in where it names none itself. */
export interface ClockPlace {
  readonly path: Path;
  readonly says: string;
  readonly zone?: string | undefined;
}

/**
 * Reads a clock time: date and time with a zone, or with their distance from UTC, or bare where the zone is given apart.
 * A time that the clocks leave out or show twice is refused, not shifted.
 */
export function readClock(text: string, { path, says, zone }: ClockPlace): Clock | Trouble {
  const fault = (wanted: Words): Trouble => ({ code: "refused", path, says, given: shown(text), wanted });
  const [, offset, own = zone] = written.exec(text) ?? [, , null];
  if (own === null) return fault(say("writeDateTimeZone", { example }));
  const iso = text.replace(" ", "T").replace(/\[.*/, "");
  if (valueOf(() => Temporal.PlainDateTime.from(iso.replace(/Z$/i, ""))) === undefined) return fault(say("noSuchDateOrTime"));
  if (own === undefined) {
    if (offset === undefined) return fault(say("hasNoZone", { example }));
    return Temporal.Instant.from(iso).toZonedDateTimeISO(/z/i.test(offset) ? "UTC" : offset);
  }
  if (!isZone(own)) return fault(say("noTimeZone", { zone: shown(own) }));
  if (offset !== undefined && !text.includes("[")) return Temporal.Instant.from(iso).toZonedDateTimeISO(own);
  const read = valueOf(() => Temporal.ZonedDateTime.from(`${iso}[${own}]`, { disambiguation: "reject", offset: "reject" }));
  if (read !== undefined) return read;
  if (offset !== undefined) return fault(say("neverThatFarFromUtc", { zone: own, offset }));
  return fault(say("clocksChange", { zone: own, iso }));
}

/** Reads a date by itself. */
export function readDate(text: string, { path, says }: ClockPlace): Temporal.PlainDate | Trouble {
  const read = /^\d{4}-\d{2}-\d{2}$/.test(text) ? valueOf(() => Temporal.PlainDate.from(text)) : undefined;
  return read ?? { code: "refused", path, says, given: shown(text), wanted: say("writeDate") };
}

/** Of what has been read, the troubles. */
export function troublesIn(read: readonly (object | undefined)[]): readonly Trouble[] {
  return read.filter((one): one is Trouble => one !== undefined && "wanted" in one);
}

/** Whether a text names a time zone. */
function isZone(zone: string): boolean {
  return valueOf(() => Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(zone)) !== undefined;
}

function valueOf<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The time to the minute with its distance from UTC and its zone: `2026-06-01T09:40-05:00[America/Chicago]`. */
export function clockText(clock: Clock): string {
  const fixed = /^[+-]/.test(clock.timeZoneId);
  return clock.toString({ smallestUnit: "minute", timeZoneName: fixed ? "never" : "auto" });
}

/**
 * The clock when a time has passed, to the whole minute: `up` for what must not come sooner, `down` for what must not come
 * later, so that rounding never shortens a wait nor lengthens a limit.
 */
export function clockAfter(start: Clock, passed: Quantity<"time">, way: "up" | "down"): Clock {
  const seconds = arithmetic.add(secondsOf(start), amountOf(passed));
  const minutes = arithmetic[way === "up" ? "ceil" : "floor"](arithmetic.divide(seconds, exact(60n)));
  return new Temporal.Instant(wholeOf(minutes) * 60n * 10n ** 9n).toZonedDateTimeISO(start.timeZoneId);
}

/** The clock before a time has passed, to the whole minute before. */
export function clockBefore(end: Clock, passed: Quantity<"time">): Clock {
  return clockAfter(end, subtract(subtract(passed, passed), passed), "down");
}

function secondsOf(clock: Clock): Amount {
  return exact(clock.epochNanoseconds, 10n ** 9n);
}

function wholeOf(amount: Amount): bigint {
  return isExact(amount) ? amount.numerator : BigInt(toDecimal(amount).toFixed(0));
}

/** The time that passes from one clock time to another; below nought where the second comes first. */
export function timeBetween(from: Clock, until: Clock): Quantity<"time"> {
  return makeQuantity("time", arithmetic.subtract(secondsOf(until), secondsOf(from)), "h");
}

/** Whether the first clock time comes before the second. */
export function isBefore(one: Clock, other: Clock): boolean {
  return one.epochNanoseconds < other.epochNanoseconds;
}

/** A day of the calendar. */
export type CalendarDay = Temporal.PlainDate;

/** Whole days from one day to another; below nought where the second comes first. */
export function daysBetween(from: CalendarDay, until: CalendarDay): number {
  return from.until(until).days;
}

/** The last day that lies within a time after a day. */
export function dayAfter(from: CalendarDay, passed: Quantity<"time">): CalendarDay {
  return from.add({ days: Number(wholeOf(arithmetic.floor(arithmetic.divide(amountOf(passed), exact(86_400n))))) });
}

/** The day so many months after a day; the last of its month where that has no such day. */
export function monthsAfter(from: CalendarDay, months: Quantity<"count">): CalendarDay {
  return from.add({ months: months.toNumber() });
}

/** The calendar day of a clock time. */
export function dayOf(clock: Clock): CalendarDay {
  return clock.toPlainDate();
}

/**
 * The clock so many minutes after midnight, on the day of a clock time or so many days later. An hour that the clocks leave
 * out on that day or show twice is refused, not shifted.
 */
export function clockOn(day: Clock, minutes: number, { path, says }: ClockPlace, daysLater = 0): Clock | Trouble {
  const plain = day.toPlainDate().add({ days: daysLater }).toPlainDateTime({ hour: Math.floor(minutes / 60), minute: minutes % 60 });
  const given = plain.toString({ smallestUnit: "minute" });
  return valueOf(() => plain.toZonedDateTime(day.timeZoneId, { disambiguation: "reject" })) ?? { code: "refused", path, says, given, wanted: say("clocksChangeThatDay", { zone: day.timeZoneId }) };
}

/** Reads a time of day as minutes after midnight. */
export function readTimeOfDay(text: string, { path, says }: ClockPlace): number | Trouble {
  const [, hours, minutes] = /^([01]\d|2[0-3]):([0-5]\d)$/.exec(text) ?? [];
  if (hours === undefined) return { code: "refused", path, says, given: shown(text), wanted: say("writeTimeOfDay") };
  return Number(hours) * 60 + Number(minutes);
}
