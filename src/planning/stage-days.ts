import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { type Clock, clockAfter, clockText, isBefore, timeBetween } from "../timing/clock.js";
import { lastUnitToday } from "../timing/last-unit-today.js";
import { type MixClock, mixClock } from "../timing/mix-clock.js";
import { unshown } from "../timing/unshown.js";
import { batchesInDay } from "./batches-in-day.js";
import type { DayPlanRead, StageRead } from "./day-plan-input.js";
import { labourTime } from "./labour-time.js";
import { say } from "./refusals.js";
import { earlierOf, laterOf, type Shifts, type Stretch, without } from "./shifts.js";
import { clockOf, wallOf } from "./stage-hold.js";
import { stretchLabour } from "./stretch-labour.js";

/** What one stage does on one day. */
export interface StageDay {
  /** The day its shift begins on. */
  readonly date: string;
  readonly from: string;
  readonly until: string;
  /** Hours of one person at the tool. */
  readonly labour: Quantity<"time">;
  /** The last unit of the day, by the frost; absent where none was asked for. */
  readonly lastUnit?: string;
  /** Batches on this day, and the clock of the first; absent where the stage mixes none. */
  readonly batches?: Quantity<"count">;
  readonly firstBatch?: MixClock;
}

/** What a stage is laid with. */
export interface StageGround {
  readonly stage: StageRead;
  readonly labour: Quantity<"time">;
  readonly persons: Quantity<"count">;
  readonly shiftShare: Quantity<"ratio">;
  readonly plan: DayPlanRead;
  readonly shifts: Shifts;
  /** The hours in which weather stops the work, and the end of what is known of it; absent where weather does not stop the stage. */
  readonly weather?: { readonly stops: readonly Stretch[]; readonly from: Clock; readonly until: Clock };
  /** The readings of the wall by the clock. */
  readonly wallReadings: readonly { readonly at: Clock; readonly temperature: Quantity<"temperature"> }[];
  readonly work: Work;
  readonly at: Path;
}

/** Lays a stage into shifts from a time on, until its labour is done. */
export function layStage(from: Clock, ground: StageGround): { readonly days: readonly StageDay[]; readonly stretch: Stretch } {
  const { stage, labour, persons, shiftShare, plan, shifts, work, at } = ground;
  const pace = { persons, availability: plan.availability, shiftShare };
  const days: StageDay[] = [];
  let left = labour;
  let begun: Clock | undefined;
  for (let index = 0, shift = shifts.at(index); shift !== undefined; index += 1, shift = shifts.at(index)) {
    if (!isBefore(from, shift.until)) continue;
    const opens = laterOf(shift.from, from);
    if (ground.weather !== undefined) known(opens, ground.weather, ground);
    const frost = frostOf(opens, ground);
    if (frost === "no time") continue;
    const closes = frost === undefined ? shift.until : earlierOf(shift.until, frost);
    const firstBatch = firstBatchOf(opens, ground);
    const ready = firstBatch === undefined ? opens : clockAfter(opens, firstBatch.readyBy, "up");
    let today = subtract(left, left);
    let [dayFrom, dayUntil]: (Clock | undefined)[] = [];
    for (const piece of isBefore(ready, closes) ? without({ from: ready, until: closes }, ground.weather?.stops ?? []) : []) {
      const lasts = timeBetween(piece.from, piece.until);
      const can = unshown(stretchLabour, { lasts, ...pace }, work, at).labour;
      const done = compare(can, left) >= 0;
      const does = done ? left : can;
      const until = done ? earlierOf(piece.until, clockAfter(piece.from, unshown(labourTime, { labour: left, ...pace }, work, at).lasts, "up")) : piece.until;
      if (ground.weather !== undefined) known(until, ground.weather, ground);
      today = sum([today, does]);
      left = subtract(left, does);
      dayFrom ??= piece.from;
      dayUntil = until;
      if (done) break;
    }
    if (dayFrom === undefined || dayUntil === undefined) continue;
    begun ??= firstBatch === undefined ? dayFrom : opens;
    const batches = stage.batches === undefined ? {} : { batches: unshown(batchesInDay, { volume: stage.batches.volume, labourToday: today, labour, batch: stage.batches.batch }, work, at).batches };
    days.push({
      date: shift.day.toString(), from: clockText(dayFrom), until: clockText(dayUntil), labour: today,
      ...(frost === undefined ? {} : { lastUnit: clockText(frost) }), ...batches, ...(firstBatch === undefined ? {} : { firstBatch }),
    });
    if (compare(left, subtract(left, left)) <= 0) return { days, stretch: { from: begun, until: dayUntil } };
  }
  return work.refuse(refusal(at, say("labourLeft", { left, labour }), say("doesNotEnd", { stage: stage.name }), "noAnswer"));
}

/** Refuses a plan that goes beyond what is known of the weather. */
function known(time: Clock, { from, until }: Pick<NonNullable<StageGround["weather"]>, "from" | "until">, { stage, work }: StageGround): void {
  if (!isBefore(time, from) && !isBefore(until, time)) return;
  work.refuse(refusal(["weather", "record"], say("fromTo", { from: clockText(from), until: clockText(until) }), say("weatherNotKnown", { stage: stage.name, time: clockText(time) }), "noAnswer"));
}

/** The last time a unit may be set in a shift, by the frost; `no time` where the wall is too cold for too long. */
function frostOf(opens: Clock, { stage, plan, wallReadings, work, at }: StageGround): Clock | "no time" | undefined {
  if (stage.frostCure === undefined) return undefined;
  const first = wallReadings.filter(({ at: time }) => !isBefore(opens, time)).length - 1;
  const readings = plan.wall.readings.slice(first);
  if (first < 0 || readings.length < 2) return work.refuse({ code: "noAnswer", path: ["wall"], given: "", wanted: say("wallNotKnown", { stage: stage.name, time: clockText(opens) }) });
  const { lastUnit } = work.part(lastUnitToday, { record: wallOf({ ...plan.wall, readings }), cure: stage.frostCure, reference: plan.reference, activation: plan.activation }, [...at, "frostCure"]).answers;
  if (lastUnit === undefined) return "no time";
  const last = clockOf(lastUnit, at);
  return isBefore(opens, last) ? last : "no time";
}

/** The clock of the first batch of a shift, at the temperature of the wall then. */
function firstBatchOf(opens: Clock, { stage, plan, wallReadings, work, at }: StageGround): MixClock | undefined {
  if (stage.batches === undefined) return undefined;
  const { mixing, slakeLow, slakeHigh, remixing, life } = stage.batches;
  const reading = wallReadings.filter(({ at: time }) => !isBefore(opens, time)).at(-1);
  if (reading === undefined) return work.refuse({ code: "noAnswer", path: ["wall"], given: "", wanted: say("wallNotKnownAt", { time: clockText(opens) }) });
  const by = plan.rule === "Arrhenius" ? { activation: plan.activation } : {};
  const warmth = { temperature: reading.temperature, reference: plan.reference, rule: plan.rule, ...by };
  return work.part(mixClock, { mixing, slakeLow, slakeHigh, remixing, life, firstWater: clockText(opens), warmth }, [...at, "batches"]).answers;
}
