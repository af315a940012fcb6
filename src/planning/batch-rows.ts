import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { type Clock, clockText, isBefore, readClock, troublesIn } from "../timing/clock.js";
import { type Reading, readReadings } from "../timing/record.js";
import { unshown } from "../timing/unshown.js";
import type { BatchLogRead, BatchRead, PlaceRead } from "./batch-log-input.js";
import { placeArea } from "./place-area.js";
import { say } from "./refusals.js";
import { waterRatio } from "./water-ratio.js";

/** The readings of the wall while a batch was in use. */
export interface ReadingsMeanwhile {
  readonly count: number;
  readonly from: string;
  readonly lowest: Quantity<"temperature">;
  readonly highest: Quantity<"temperature">;
}

/** A batch of the log with what follows from it. */
export interface BatchRow {
  readonly batch: string;
  readonly material: string;
  readonly lot: string;
  readonly firstWater: string;
  readonly usedUp?: string;
  readonly dryMass: Quantity<"mass">;
  readonly water: Quantity<"volume">;
  /** Water to dry mix, by mass. */
  readonly waterRatio: Quantity<"ratio">;
  readonly wallTemperature: Quantity<"temperature">;
  readonly places: readonly PlaceRead[];
  /** Area of its places, openings in them counted; absent where it has none. */
  readonly area?: Quantity<"area">;
  /** Absent where no readings were given, or none reach the time of the batch. */
  readonly readings?: ReadingsMeanwhile;
  readonly note?: string;
}

type WallReading = Reading<{ readonly at: string; readonly temperature: Quantity<"temperature"> }>;

/** Reads a log: batches of one name, a batch used up before its first water and places inside out are refused. */
export function batchRows({ zone, batches, readings: record }: BatchLogRead, work: Work): readonly BatchRow[] {
  if (batches.length === 0 || batches.length > 10_000) work.refuse(refusal(["batches"], common("counted", { count: batches.length, of: "batches" }), common("fromOneTo", { most: 10_000 })));
  const clocks = batches.map(({ firstWater, usedUp }, index) => ({
    first: readClock(firstWater, { path: ["batches", index, "firstWater"], says: "first water on the powder", zone }),
    used: usedUp === undefined ? undefined : readClock(usedUp, { path: ["batches", index, "usedUp"], says: "when the last of it was used", zone }),
  }));
  refuseAll([...clocks.flatMap(({ first, used }) => troublesIn([first, used])), ...doubles(batches), ...insideOut(batches)], work);
  const times = clocks as readonly { readonly first: Clock; readonly used?: Clock }[];
  refuseAll(times.flatMap(({ first, used }, index): Trouble[] => (used !== undefined && isBefore(used, first) ? [{ code: "refused", path: ["batches", index, "usedUp"], given: clockText(used), wanted: say("notBeforeFirstWater", { time: clockText(first) }) }] : [])), work);
  const readings = record === undefined ? undefined : readReadings(record, work, ["readings"]);
  return batches.map(({ batch, material, lot, dryMass, water, wallTemperature, places, note }, index): BatchRow => {
    const { first, used } = times[index] as { readonly first: Clock; readonly used?: Clock };
    const given = { dryMass, water };
    const ratio = index === 0 ? work.part(waterRatio, given, ["batches", index]).answers.waterRatio : unshown(waterRatio, given, work, ["batches", index]).waterRatio;
    const areas = places.map(({ left, right, bottom, top }, place) => unshown(placeArea, { left, right, bottom, top }, work, ["batches", index, "places", place]).area);
    const meanwhile = readings === undefined ? undefined : readingsFor(readings, first, used);
    if (readings !== undefined && meanwhile === undefined) work.caution(`No reading reaches batch ${batch}.`);
    return {
      batch, material, lot, dryMass, water, wallTemperature, places, waterRatio: ratio, firstWater: clockText(first),
      ...(used === undefined ? {} : { usedUp: clockText(used) }), ...(areas.length === 0 ? {} : { area: sum(areas) }),
      ...(meanwhile === undefined ? {} : { readings: meanwhile }), ...(note === undefined ? {} : { note }),
    };
  });
}

function insideOut(batches: readonly BatchRead[]): readonly Trouble[] {
  return batches.flatMap(({ places }, index) => places.flatMap(({ left, right, bottom, top }, place): Trouble[] => {
    const path = ["batches", index, "places", place];
    return ([["right", left, right], ["top", bottom, top]] as const).flatMap(([name, from, until]) => (compare(until, from) > 0 ? [] : [{ code: "tooLow", path: [...path, name], given: until.toString(), wanted: say("aboveTheOther", { other: from }) }]));
  }));
}

function doubles(batches: readonly BatchRead[]): readonly Trouble[] {
  return batches.flatMap(({ batch }, index): Trouble[] => {
    if (batch.trim() === "") return [{ code: "refused", path: ["batches", index, "batch"], given: '""', wanted: say("nameTheBatch") }];
    const before = batches.findIndex((other) => other.batch === batch);
    return before < index ? [{ code: "refused", path: ["batches", index, "batch"], given: `"${batch.slice(0, 80)}"`, wanted: common("takenName", { of: "a batch" }) }] : [];
  });
}

/** The reading that holds at the first water, and those until it was used up. */
function readingsFor(readings: readonly WallReading[], first: Clock, used: Clock | undefined): ReadingsMeanwhile | undefined {
  const from = readings.filter(({ at }) => !isBefore(first, at)).length - 1;
  const one = readings[from];
  if (one === undefined || (from === readings.length - 1 && isBefore(one.at, first))) return undefined;
  const meanwhile = readings.slice(from).filter(({ at }, index) => index === 0 || (used !== undefined && !isBefore(used, at)));
  const temperatures = meanwhile.map(({ temperature }) => temperature);
  const [lowest, highest] = [-1, 1].map((way) => temperatures.reduce((a, b) => (compare(b, a) * way > 0 ? b : a))) as [Quantity<"temperature">, Quantity<"temperature">];
  return { count: meanwhile.length, from: clockText(one.at), lowest, highest };
}
