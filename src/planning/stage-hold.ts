import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import { type Clock, clockText, isBefore, readClock } from "../timing/clock.js";
import { workWindows } from "../timing/work-windows.js";
import type { DayPlanRead, StageRead } from "./day-plan-input.js";
import { say } from "./refusals.js";
import type { Stretch } from "./shifts.js";

/** The wait before a stage. */
export interface StageHold {
  readonly after: string;
  readonly earliest: string;
  readonly typical?: string;
  /** The end of the window, counted from the beginning of the stage before; absent where the data sheet has none. */
  readonly latest?: string;
  /** What is looked for before the clock is believed. */
  readonly test: string;
}

/** A stage that has been laid, and when. */
export interface LaidStage extends Stretch {
  readonly name: string;
}

/** When a stage may begin by its hold, which counts from the end of the stage before; its window from that one's beginning. */
export function holdOf(stage: StageRead, before: readonly LaidStage[], plan: DayPlanRead, work: Work, at: Path): { readonly from: Clock; readonly hold: StageHold } | undefined {
  const { hold } = stage;
  if (hold === undefined) return undefined;
  const path = [...at, "hold"];
  const laid = hold.after === undefined ? before.at(-1) : before.find(({ name }) => name === hold.after);
  if (laid === undefined) return work.refuse({ code: "refused", path: [...path, "after"], given: hold.after ?? "", wanted: say("waitsForStageBefore") });
  const { work: name, least, typical, most } = hold;
  const window = windowOf({ work: name, done: clockText(laid.until), least, ...(typical === undefined ? {} : { typical }) }, plan, work, path);
  const late = most === undefined ? undefined : windowOf({ work: name, done: clockText(laid.from), least, most }, plan, work, path);
  const { earliest } = window;
  const wanted = plan.holdsBy === "typical" && typical !== undefined ? window.typical : earliest;
  if (earliest === undefined || wanted === undefined) return work.refuse({ code: "noAnswer", path: ["wall"], given: "", wanted: say("wallEndsBefore", { stage: stage.name }) });
  const from = clockOf(wanted, path);
  const latest = late?.latest;
  return { from, hold: { after: laid.name, earliest, ...(window.typical === undefined ? {} : { typical: window.typical }), ...(latest === undefined ? {} : { latest }), test: window.test } };
}

/** Whether a stage begins in its window, where it has one. */
export function inWindow(begins: Clock, hold: StageHold | undefined): boolean {
  return hold?.latest === undefined || !isBefore(clockOf(hold.latest, []), begins);
}

function windowOf(one: Parameters<typeof workWindows>[0]["holds"][number], { rule, activation, reference, wall }: DayPlanRead, work: Work, path: Path): ReturnType<typeof workWindows>["windows"][number] {
  const by = rule === "Arrhenius" ? { activation } : {};
  const [window] = work.part(workWindows, { rule, ...by, reference, record: wallOf(wall), holds: [one] }, path).answers.windows;
  if (window === undefined) throw new Error("there is a window for each hold");
  return window;
}

/** A record that has been read, as it may be handed on. */
export function wallOf({ zone, ...rest }: DayPlanRead["wall"]): Parameters<typeof workWindows>[0]["record"] {
  return { ...rest, ...(zone === undefined ? {} : { zone }) };
}

/** A clock time that the package wrote itself. */
export function clockOf(text: string, path: Path): Clock {
  const read = readClock(text, { path, says: "a time" });
  if ("wanted" in read) throw new Error(`${text} is no time`);
  return read;
}

