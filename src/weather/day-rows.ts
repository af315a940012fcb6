import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { type CalendarDay, type Clock, clockAfter, clockOn, dayOf, daysBetween, isBefore, readDate, readTimeOfDay, troublesIn } from "../timing/clock.js";
import { readReadings } from "../timing/record.js";
import { say } from "./refusals.js";
import type { WeatherDaysRead } from "./weather-days-input.js";

/** What the weather of one day comes to. */
export interface DayRow {
  readonly day: CalendarDay;
  /** Lowest and highest temperature of the shift. */
  readonly low: Quantity<"temperature">;
  readonly high: Quantity<"temperature">;
  /** Lowest from the beginning of the shift to the end of the protection after it. */
  readonly lowWithProtection: Quantity<"temperature">;
  /** Whether the protection lasts beyond the beginning of the next day's shift. */
  readonly protectsNextShift: boolean;
}

/** A shift, in minutes after midnight. */
interface Shift {
  readonly from: number;
  readonly until: number;
}

/** The days of a record, or those given one by one. */
export function dayRows(given: WeatherDaysRead, work: Work): readonly DayRow[] {
  const { record, days } = given;
  if ((record === undefined) === (days === undefined)) {
    work.refuse({ code: "either", path: ["weather"], given: record === undefined ? "" : "record and days", wanted: { kind: "exactlyOne", of: ["record", "days"] } });
  }
  const shift = readShift(given, work);
  return days === undefined ? rowsOfRecord(given, shift, work) : rowsGiven(days, given.protection, shift, work);
}

function readShift({ shift }: WeatherDaysRead, work: Work): Shift {
  const read = [
    readTimeOfDay(shift.from, { path: ["shift", "from"], says: "beginning of the shift" }),
    readTimeOfDay(shift.until, { path: ["shift", "until"], says: "end of the shift" }),
  ];
  refuseAll(read.filter((one) => typeof one === "object"), work);
  const [from, until] = read as readonly number[] as readonly [number, number];
  if (until <= from) work.refuse({ code: "refused", path: ["shift", "until"], given: shift.until, wanted: say("shiftOverMidnight", { from: shift.from }) });
  return { from, until };
}

function rowsOfRecord({ record, protection }: WeatherDaysRead, shift: Shift, work: Work): readonly DayRow[] {
  if (record === undefined) throw new Error("there is no record");
  const readings = readReadings(record, work, ["record"]).map((reading) => ({ ...reading, until: clockAfter(reading.at, record.every, "up") }));
  const [first, last] = [readings[0], readings.at(-1)];
  if (first === undefined || last === undefined) throw new Error("a record has readings");
  // A year of hours is gone through once for each of its days, so plain numbers; readings and shifts stand at whole seconds.
  const spans = readings.map(({ at, until, temperature }) => ({ begins: at.epochMilliseconds, ends: until.epochMilliseconds, temperature }));
  const within = (from: Clock, until: Clock): readonly Quantity<"temperature">[] => {
    const [begins, ends] = [from.epochMilliseconds, until.epochMilliseconds];
    return spans.filter((span) => span.begins < ends && begins < span.ends).map(({ temperature }) => temperature);
  };
  const mornings = [...new Map(readings.map(({ at }) => [dayOf(at).toString(), at])).values()];
  const rows = mornings.flatMap((at): DayRow[] => {
    const [from, until] = [shiftClock(at, shift, "from", 0, work), shiftClock(at, shift, "until", 0, work)];
    if (isBefore(from, first.at) || isBefore(last.until, until)) return [];
    const protectedUntil = clockAfter(until, protection, "up");
    if (isBefore(last.until, protectedUntil)) work.caution(`The record ends before the protection of ${dayOf(at).toString()} does.`);
    const temperatures = within(from, until);
    return [{ day: dayOf(at), low: lowest(temperatures), high: highest(temperatures), lowWithProtection: lowest(within(from, protectedUntil)), protectsNextShift: isBefore(shiftClock(at, shift, "from", 1, work), protectedUntil) }];
  });
  if (rows.length === 0) work.refuse(refusal(["record"], say("noShiftCovered"), say("coverAShift")));
  if (rows.length < mornings.length) work.caution("Days whose shift the record does not cover in full are not counted.");
  return rows;
}

/** An end of the shift by the clock, on a day of the record or so many days later. */
function shiftClock(day: Clock, shift: Shift, end: keyof Shift, daysLater: number, work: Work): Clock {
  const clock = clockOn(day, shift[end], { path: ["shift", end], says: end === "from" ? "beginning of the shift" : "end of the shift" }, daysLater);
  return "wanted" in clock ? work.refuse(clock) : clock;
}

function rowsGiven(days: NonNullable<WeatherDaysRead["days"]>, protection: Quantity<"time">, shift: Shift, work: Work): readonly DayRow[] {
  const read = days.map(({ date }, index) => readDate(date, { path: ["days", index, "date"], says: "the day" }));
  refuseAll([...(days.length === 0 || days.length > 3660 ? [refusal(["days"], common("counted", { count: days.length, of: "days" }), common("fromOneTo", { most: 3660 }))] : []), ...troublesIn(read)], work);
  const dates = read as readonly CalendarDay[];
  refuseAll(days.flatMap(({ date, low, high }, index): Trouble[] => {
    const [before, own] = [dates[index - 1], dates[index]];
    const late = before !== undefined && own !== undefined && daysBetween(before, own) < 1;
    return [
      ...(late ? [refusal(["days", index, "date"], date, say("daysInOrder"))] : []),
      ...(compare(high, low) < 0 ? [refusal(["days", index, "high"], high.toString(), say("highUnderLow", { low }))] : []),
    ];
  }), work);
  const betweenShifts = subtract(quantity("time", "24 h"), quantity("time", { value: shift.until - shift.from, unit: "min" }));
  const protectsNextShift = compare(protection, betweenShifts) > 0;
  return days.map(({ low, high }, index) => ({ day: dates[index] as CalendarDay, low, high, lowWithProtection: low, protectsNextShift }));
}

function highest(temperatures: readonly Quantity<"temperature">[]): Quantity<"temperature"> {
  return temperatures.reduce((a, b) => (compare(a, b) >= 0 ? a : b));
}

function lowest(temperatures: readonly Quantity<"temperature">[]): Quantity<"temperature"> {
  return temperatures.reduce((a, b) => (compare(a, b) <= 0 ? a : b));
}
