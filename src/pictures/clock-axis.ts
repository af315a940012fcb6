import { shown, problem } from "../core/problems.js";
import { say } from "./refusals.js";
import type { Look } from "./results.js";
import { line, widthOfWords, words } from "./svg.js";

/** A time as the answers write it: `2026-11-02T14:00-06:00[America/Chicago]`. */
export interface ClockTime {
  /** Milliseconds of the one time line that all zones share. */
  readonly at: number;
  /** The date and the time of day where the record was made. */
  readonly date: string;
  readonly time: string;
}

const form = /^(\d{4}-\d{2}-\d{2})T(\d{2}:\d{2})([+-]\d{2}:\d{2}|Z)(?:\[[^\]]*\])?$/;

function readClockTime(text: string): ClockTime | undefined {
  const [, date, time, offset] = form.exec(text) ?? [];
  if (date === undefined || time === undefined || offset === undefined) return undefined;
  const at = Date.parse(`${date}T${time}${offset}`);
  return Number.isNaN(at) ? undefined : { at, date, time };
}

/** Looks whether a value is a time as the answers write it. */
export const clockTime: Look = (value, path, problems) => {
  if (typeof value !== "string" || readClockTime(value) === undefined) {
    problems.push(problem({ code: value === undefined ? "missing" : "refused", path, given: value === undefined ? "" : shown(value), wanted: say("timeWanted") }));
  }
};

/** A time that has been looked at. */
export function clockOf(text: string): ClockTime {
  const read = readClockTime(text);
  if (read === undefined) throw new RangeError(`${text} is no time`);
  return read;
}

/** A time of day, with its date where that is another than the one before. */
export function timeText(time: ClockTime, before?: ClockTime): string {
  return time.date === before?.date ? time.time : `${time.date} ${time.time}`;
}

/** A scale of times along the sheet. */
export interface ClockScale {
  readonly from: number;
  readonly until: number;
  readonly left: number;
  readonly right: number;
  readonly x: (at: number) => number;
}

/** Puts times between two places of the sheet. */
export function clockScale(from: number, until: number, left: number, right: number): ClockScale {
  return { from, until, left, right, x: (at) => left + ((at - from) / (until - from)) * (right - left) };
}

const size = 11;

/** The times of a record that are written: round hours as far apart as their words need, or else every so many readings. */
export function ticksOf(times: readonly ClockTime[], scale: ClockScale): readonly ClockTime[] {
  const least = 46;
  const apart = (ticks: readonly ClockTime[]): boolean => ticks.slice(1).every(({ at }, index) => scale.x(at) - scale.x(ticks[index]?.at ?? at) >= least);
  for (const every of [1, 2, 3, 6, 12]) {
    const ticks = times.filter(({ time }) => time.endsWith(":00") && Number(time.slice(0, 2)) % every === 0);
    if (ticks.length > 1 && apart(ticks)) return ticks;
  }
  const days = times.filter(({ date }, index) => date !== times[index - 1]?.date);
  const candidates = days.length > 2 ? days : times;
  const most = Math.max(1, Math.floor((scale.right - scale.left) / 80));
  const every = Math.ceil(candidates.length / most);
  return candidates.filter((_, index) => index % every === 0);
}

/** The axis at the foot of a chart: times of day, and below them the date at the first of each day. */
export function clockAxis(ticks: readonly ClockTime[], scale: ClockScale, y: number): readonly string[] {
  const first = ticks.filter(({ date }, index) => date !== ticks[index - 1]?.date);
  const wide = widthOfWords("2026-11-02", size) + 8;
  // Of two dates that have no room beside each other, the later is written.
  const dates = first.filter(({ at }, index) => index === first.length - 1 || scale.x(first[index + 1]?.at ?? 0) - scale.x(at) >= wide);
  return [
    line([scale.left, y], [scale.right, y]),
    ...ticks.flatMap(({ at, time }) => [line([scale.x(at), y], [scale.x(at), y + 5]), words(time, [scale.x(at), y + 14], { size })]),
    ...dates.map(({ at, date }) => words(date, [scale.x(at), y + 29], { size })),
  ];
}
