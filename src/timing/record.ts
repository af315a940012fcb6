import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Path, Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, isNought } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { type Clock, isBefore, readClock, timeBetween, troublesIn } from "./clock.js";
import { say } from "./refusals.js";

/** The longest record that is read: a reading every hour for a year has 8,784. */
const most = 10_000;

/** Readings by the clock, as they come in. */
interface Recorded<R> {
  readonly zone?: string | undefined;
  readonly every: Quantity<"time">;
  readonly readings: readonly R[];
}

/** A reading whose clock time has been read. */
export type Reading<R> = Omit<R, "at"> & { readonly at: Clock };

/** Reads the clock times of a record; gaps, readings out of order, double ones and mixed units are refused. */
export function readReadings<R extends { readonly at: string; readonly temperature: Quantity<"temperature"> }>({ zone, every, readings }: Recorded<R>, work: Work, path: Path): readonly Reading<R>[] {
  if (readings.length < 2 || readings.length > most) {
    work.refuse(refusal([...path, "readings"], common("counted", { count: readings.length, of: "readings" }), say("recordHasFrom", { least: 2, most })));
  }
  const clocks = readings.map(({ at }, index) => readClock(at, { path: [...path, "readings", index, "at"], says: "time of the reading", zone }));
  refuseAll(firstOf([...troublesIn(clocks), ...mixedUnits(readings, path)]), work);
  const read = clocks as readonly Clock[];
  refuseAll(firstOf(read.flatMap((clock, index) => outOfStep(read[index - 1], clock, every, [...path, "readings", index, "at"]))), work);
  return readings.map((reading, index): Reading<R> => ({ ...reading, at: read[index] as Clock }));
}

/** Of the troubles of a long record those that a reader can take in. */
function firstOf(troubles: readonly Trouble[]): readonly Trouble[] {
  return troubles.slice(0, 20);
}

/** What is wrong with the time of a reading after the one before it. */
function outOfStep(before: Clock | undefined, clock: Clock, every: Quantity<"time">, path: Path): readonly Trouble[] {
  if (before === undefined) return [];
  const passed = timeBetween(before, clock);
  const order = compare(passed, every);
  if (order === 0) return [];
  const late = say(order > 0 ? "gapInRecord" : "comesTooSoon", { every });
  const wanted = isNought(passed) ? say("sameTimeTwice") : isBefore(clock, before) ? say("notInOrderOfTime") : late;
  return [refusal(path, say("afterReadingAbove", { time: passed }), wanted)];
}

function mixedUnits(readings: readonly { readonly temperature: Quantity<"temperature"> }[], path: Path): readonly Trouble[] {
  const unit = readings[0]?.temperature.unit;
  const index = readings.findIndex(({ temperature }) => temperature.unit !== unit);
  const other = readings[index]?.temperature;
  if (unit === undefined || other === undefined) return [];
  return [{ code: "refused", path: [...path, "readings", index, "temperature"], given: other.toString(), wanted: say("oneUnitInRecord", { unit }) }];
}
