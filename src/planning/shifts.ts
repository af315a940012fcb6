import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { quantity } from "../core/read-quantity.js";
import { refuseAll } from "../core/refuse-all.js";
import { type CalendarDay, type Clock, clockAfter, clockOn, dayOf, isBefore, readDate, readTimeOfDay, troublesIn } from "../timing/clock.js";
import { say } from "./refusals.js";

/** A stretch of time by the clock. */
export interface Stretch {
  readonly from: Clock;
  readonly until: Clock;
}

/** One shift: a stretch, and the day it begins on. */
export interface Shift extends Stretch {
  readonly day: CalendarDay;
}

/** The days of the week as they are written. */
export const weekdays = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"] as const;

/** When the crew works. */
export interface ShiftsRead {
  readonly from: string;
  readonly until: string;
  readonly workdays: readonly (typeof weekdays)[number][];
  readonly closed?: readonly string[] | undefined;
}

/** How far a plan is laid: what takes longer is no plan. */
const farthest = 400;

/** The shifts of a plan, one after the other; each is worked out when it is asked for. */
export interface Shifts {
  /** How long a shift lasts as a rule. */
  readonly lasts: Quantity<"time">;
  /** A shift by its number from 0; none beyond the farthest day of a plan. */
  readonly at: (index: number) => Shift | undefined;
}

/** The shifts from a time on; one that ends by the clock before it begins goes over midnight. */
export function shiftsFrom(start: Clock, read: ShiftsRead, work: Work): Shifts {
  const [begin, end] = edgesOf(read, work);
  const closed = new Set(read.closed);
  const found: Shift[] = [];
  let later = -1;
  const shiftOn = (day: number): Shift | undefined => {
    const date = dayOf(start).add({ days: day });
    const name = weekdays[date.dayOfWeek - 1];
    if (name === undefined || !read.workdays.includes(name) || closed.has(date.toString())) return undefined;
    const from = clockAt(start, begin, day, "from", work);
    const until = clockAt(start, end, day + (end < begin ? 1 : 0), "until", work);
    return isBefore(start, until) ? { day: date, from: laterOf(from, start), until } : undefined;
  };
  const at = (index: number): Shift | undefined => {
    for (; found.length <= index && later <= farthest; later += 1) {
      const shift = shiftOn(later);
      if (shift !== undefined) found.push(shift);
    }
    return found[index];
  };
  return { lasts: quantity("time", { value: end < begin ? end - begin + 24 * 60 : end - begin, unit: "min" }), at };
}

/** Beginning and end of a shift in minutes after midnight. */
function edgesOf({ from, until, workdays, closed = [] }: ShiftsRead, work: Work): readonly [number, number] {
  const path = ["shifts"];
  const times = [readTimeOfDay(from, { path: [...path, "from"], says: "beginning of the shift" }), readTimeOfDay(until, { path: [...path, "until"], says: "end of the shift" })];
  const dates = closed.map((day, index) => readDate(day, { path: [...path, "closed", index], says: "a day on which nobody works" }));
  refuseAll([
    ...times.flatMap((one) => (typeof one === "object" ? [one] : [])), ...troublesIn(dates),
    ...(from === until ? [{ code: "refused" as const, path: [...path, "until"], given: until, wanted: say("notTheBeginning", { from }) }] : []),
    ...(workdays.length === 0 ? [{ code: "refused" as const, path: [...path, "workdays"], given: "", wanted: say("nameWorkdays") }] : []),
  ], work);
  const [begin, end] = times;
  if (typeof begin !== "number" || typeof end !== "number") throw new Error("what is wrong with the shift has been refused");
  return [begin, end];
}

/** The clock at minutes of a day; an hour that the clocks leave out or show twice on that day is refused, not shifted. */
function clockAt(start: Clock, minutes: number, later: number, end: string, work: Work): Clock {
  const clock = clockOn(start, minutes, { path: ["shifts", end], says: "a shift begins and ends by the clock" }, later);
  return "wanted" in clock ? work.refuse(clock) : clock;
}

/** The later of two times. */
export function laterOf(one: Clock, other: Clock): Clock {
  return isBefore(one, other) ? other : one;
}

/** The earlier of two times. */
export function earlierOf(one: Clock, other: Clock): Clock {
  return isBefore(other, one) ? other : one;
}

/** What is left of a stretch where others are taken out of it; they come in their order and do not overlap. */
export function without(stretch: Stretch, taken: readonly Stretch[]): readonly Stretch[] {
  return taken.reduce<readonly Stretch[]>(
    (left, { from, until }) =>
      left.flatMap((one): Stretch[] => {
        if (!isBefore(one.from, until) || !isBefore(from, one.until)) return [one];
        return [{ from: one.from, until: earlierOf(one.until, from) }, { from: laterOf(one.from, until), until: one.until }].filter((piece) => isBefore(piece.from, piece.until));
      }),
    [stretch],
  );
}

/** The stretch that a reading stands for. */
export function stretchAfter(from: Clock, every: Quantity<"time">): Stretch {
  return { from, until: clockAfter(from, every, "up") };
}
