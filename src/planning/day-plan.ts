import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { nested } from "../schema/nested.js";
import { type Clock, clockAfter, clockText, isBefore, readClock, troublesIn } from "../timing/clock.js";
import { readReadings } from "../timing/record.js";
import { type MasonryWeather, masonryWeather } from "../weather/masonry-weather.js";
import { dayPlanInput, type DayPlanRead } from "./day-plan-input.js";
import { grouped } from "./grouped.js";
import { say } from "./refusals.js";
import { shiftShare } from "./shift-share.js";
import { laterOf, shiftsFrom, stretchAfter } from "./shifts.js";
import { type StageDay, type StageGround, layStage } from "./stage-days.js";
import { clockOf, holdOf, inWindow, type LaidStage, type StageHold } from "./stage-hold.js";
import { labourOf } from "./task.js";

/** One stage of a plan. */
export interface PlannedStage {
  readonly name: string;
  /** Hours of one person at the tool. */
  readonly labour: Quantity<"time">;
  readonly begins: string;
  readonly ends: string;
  readonly hold?: StageHold;
  /** Whether it begins before its window is shut; true where it has none. */
  readonly inWindow: boolean;
  readonly days: readonly StageDay[];
}

/** One day of a plan. */
export interface PlannedDay {
  readonly date: string;
  readonly stages: readonly string[];
  readonly labour: Quantity<"time">;
  /** Batches on this day; absent where none are mixed. */
  readonly batches?: Quantity<"count">;
}

/** A plan of days from start to closeout. */
export interface DayPlan {
  readonly stages: readonly PlannedStage[];
  readonly days: readonly PlannedDay[];
  readonly ends: string;
}

/**
 * A plan of days for one crew: stages one after the other in its shifts, each from its labour at rates of your own, waiting as
 * long as the record of the wall asks, stopped by weather and frost where they stop it, with batches a day. The net of an order
 * line of a take-off may be given as the amount of a stage.
 *
 * @example
 * ```ts
 * const readings = Array.from({ length: 120 }, (_, hour) => ({ at: new Date(Date.UTC(2026, 5, 1, 12 + hour)).toISOString().slice(0, 16) + "Z", temperature: "70 degF" }));
 * const plan = dayPlan({
 *   start: "2026-06-01T07:00", zone: "America/Chicago", crew: 4, availability: 1, rule: "doubling", activation: "5000 K", reference: "70 degF", holdsBy: "least",
 *   shifts: { from: "07:00", until: "15:30", breaks: "0.5 h", workdays: ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"] },
 *   wall: { zone: "America/Chicago", every: "1 h", readingIs: "mean until the next", readings },
 *   stages: [
 *     { name: "setting", inWeather: "goes on", rate: { of: "area", amount: "200 ft2", per: "100 ft2", hours: "16 h", factor: 1 } },
 *     { name: "pointing", inWeather: "goes on", rate: { of: "area", amount: "200 ft2", per: "100 ft2", hours: "8 h", factor: 1 }, hold: { work: "pointing", least: "24 h" } },
 *   ],
 * });
 * plan.stages[0].ends; // "2026-06-01T15:30-05:00[America/Chicago]"
 * plan.stages[1].begins; // "2026-06-03T07:00-05:00[America/Chicago]"
 * plan.stages[1].hold.test; // "no unit moves under the thumb"
 * ```
 */
export const dayPlan = /* @__PURE__ */ composed({
  id: "planning.day-plan",
  title: "Plan of days for a crew",
  reads: /* @__PURE__ */ nested(dayPlanInput),
  cautions: ["Test before the clock: a hold says when to look, the wall says when to begin. A plan on a forecast is laid anew each morning."],
  run: (plan, work): DayPlan => {
    const start = readClock(plan.start, { path: ["start"], says: "when the plan begins", zone: plan.zone ?? plan.wall.zone });
    refuseAll([...troublesIn([start]), ...faultsOf(plan)], work);
    const shifts = shiftsFrom(start as Clock, plan.shifts, work);
    const share = work.part(shiftShare, { shift: shifts.lasts, breaks: plan.shifts.breaks }, ["shifts"]).answers.shiftShare;
    work.assume("breaks are spread evenly over the shift; one crew does one stage after the other");
    const wallReadings = readReadings(plan.wall, work, ["wall"]);
    const wallEnds = clockAfter(wallReadings.at(-1)?.at ?? (start as Clock), plan.wall.every, "down");
    const ground = { plan, shifts, shiftShare: share, wallReadings, work };
    const weather = weatherOf(plan, work);
    const laid: LaidStage[] = [];
    const stages = plan.stages.map((stage, index): PlannedStage => {
      const at = ["stages", index];
      const labour = labourOf(stage.rate, work, [...at, "rate"]);
      const held = holdOf(stage, laid, plan, work, at);
      const free = laid.at(-1)?.until ?? (start as Clock);
      const stops = stage.inWeather === "stops" && weather !== undefined ? { weather } : {};
      const { days, stretch } = layStage(held === undefined ? free : laterOf(free, held.from), { ...ground, ...stops, stage, labour, persons: stage.persons ?? plan.crew, at });
      laid.push({ name: stage.name, ...stretch });
      if (stage.hold?.most !== undefined && held?.hold.latest === undefined && isBefore(wallEnds, stretch.from)) {
        work.refuse(refusal(["wall"], say("ends", { time: clockText(wallEnds) }), say("windowNotKnown", { stage: stage.name, time: clockText(stretch.from) }), "noAnswer"));
      }
      const open = inWindow(stretch.from, held?.hold);
      if (!open) work.caution(`${stage.name} begins after its window is shut, ${held?.hold.latest ?? ""}: bring it forward, or ask the data sheet how the face is made ready.`);
      return { name: stage.name, labour, begins: clockText(stretch.from), ends: clockText(stretch.until), ...(held === undefined ? {} : { hold: held.hold }), inWindow: open, days };
    });
    return { stages, days: daysOf(stages), ends: stages.at(-1)?.ends ?? clockText(start as Clock) };
  },
});

function faultsOf({ stages, crew, weather }: DayPlanRead): readonly Trouble[] {
  return [
    ...(stages.length === 0 || stages.length > 100 ? [refusal(["stages"], common("counted", { count: stages.length, of: "stages" }), common("fromOneTo", { most: 100 }))] : []),
    ...stages.flatMap(({ name, persons, inWeather }, index): Trouble[] => [
      ...(stages.findIndex((other) => other.name === name) < index ? [{ code: "refused" as const, path: ["stages", index, "name"], given: `"${name.slice(0, 80)}"`, wanted: common("takenName", { of: "a stage" }) }] : []),
      ...(persons !== undefined && compare(persons, crew) > 0 ? [{ code: "tooHigh" as const, path: ["stages", index, "persons"], given: persons.toString(), wanted: say("mostOfCrew", { crew }) }] : []),
      ...(inWeather === "stops" && weather === undefined ? [{ code: "missing" as const, path: ["weather"], given: "", wanted: say("stopsForWeather", { stage: name }) }] : []),
    ]),
  ];
}

/** The hours in which the weather stops the work, and how far it is known. */
function weatherOf({ weather }: DayPlanRead, work: Work): StageGround["weather"] {
  if (weather === undefined) return undefined;
  const { ruleSet, stopBelow, record: { zone, every, readings } } = weather;
  const record = { every, readings: readings.map(({ wind, ...reading }) => ({ ...reading, ...(wind === undefined ? {} : { wind }) })), ...(zone === undefined ? {} : { zone }) };
  const { hours }: MasonryWeather = work.part(masonryWeather, { ruleSet, record, ...(stopBelow === undefined ? {} : { stopBelow }) }, ["weather"]).answers;
  const clocks = hours.map(({ at }) => clockOf(at, ["weather"]));
  const [from, last] = [clocks[0], clocks.at(-1)];
  if (from === undefined || last === undefined) throw new Error("a record has readings");
  return { stops: hours.flatMap(({ stops }, index) => (stops ? [stretchAfter(clocks[index] ?? from, every)] : [])), from, until: clockAfter(last, every, "down") };
}

function daysOf(stages: readonly PlannedStage[]): readonly PlannedDay[] {
  const rows = stages.flatMap(({ name, days }) => days.map((day) => ({ name, ...day })));
  return [...grouped(rows, ({ date }) => date)].map(([date, today]): PlannedDay => {
    const mixed = today.flatMap(({ batches }) => batches ?? []);
    return { date, stages: today.map(({ name }) => name), labour: sum(today.map(({ labour }) => labour)), ...(mixed.length === 0 ? {} : { batches: sum(mixed) }) };
  });
}

