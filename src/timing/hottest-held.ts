import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { type Clock, clockText, isBefore, timeBetween } from "./clock.js";
import type { RecordRead } from "./record-input.js";
import { type Reading, readReadings } from "./record.js";
import { say } from "./refusals.js";

/**
 * The highest temperature that a surface kept up for an hour from a time on. Readings an hour or more apart count as they
 * stand; of those closer together, the lowest within an hour.
 */
export function hottestHeld(record: RecordRead | undefined, start: Clock, work: Work): Quantity<"temperature"> {
  if (record === undefined) throw new Error("there is no record");
  const all = readReadings(record, work, ["surface"]);
  const [begin] = all;
  if (begin !== undefined && isBefore(start, begin.at)) {
    work.refuse(refusal(["surface"], say("begins", { time: clockText(begin.at) }), say("mustBeginBy", { time: clockText(start) })));
  }
  const readings = all.filter(({ at }) => !isBefore(at, start));
  const covers = (from: number): number => readings.findIndex((_, until) => until >= from && lasts(readings, from, until, record) >= 0);
  const held = readings.flatMap((_, from): Quantity<"temperature">[] => {
    const until = covers(from);
    return until < 0 ? [] : [lowest(readings.slice(from, until + 1).map(({ temperature }) => temperature))];
  });
  const [first, ...rest] = held;
  if (first === undefined) return work.refuse({ code: "noAnswer", path: ["surface"], given: "", wanted: say("noHourAfter", { time: clockText(start) }) });
  return rest.reduce((highest, one) => (compare(one, highest) > 0 ? one : highest), first);
}

/** Whether the readings from one to another cover an hour: above nought or nought where they do. */
function lasts(readings: readonly Reading<{ readonly temperature: Quantity<"temperature"> }>[], from: number, until: number, { readingIs, every }: RecordRead): number {
  const [one, other] = [readings[from], readings[until]];
  if (one === undefined || other === undefined) return -1;
  const between = timeBetween(one.at, other.at);
  const hour = quantity("time", "1 h");
  const withinHour = readingIs === "momentary" && compare(every, hour) < 0;
  return compare(between, withinHour ? hour : subtract(hour, every));
}

function lowest(temperatures: readonly Quantity<"temperature">[]): Quantity<"temperature"> {
  return temperatures.reduce((low, one) => (compare(one, low) < 0 ? one : low));
}
