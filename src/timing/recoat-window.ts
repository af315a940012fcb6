import { common } from "../core/common-refusals.js";
import { composed } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { hottestHour } from "../data/timing.js";
import { nested } from "../schema/nested.js";
import { type Clock, clockAfter, clockText, isBefore, readClock, troublesIn } from "./clock.js";
import { hottestHeld } from "./hottest-held.js";
import { recoatWindowInput, type RecoatRow } from "./recoat-window-input.js";
import { say } from "./refusals.js";

/** When the next coat may go on. */
export interface RecoatWindow {
  /** Counted from the last patch of the coat before. */
  readonly earliest: string;
  /** Counted from its first patch. */
  readonly latest: string;
  readonly hottestSurface: Quantity<"temperature">;
  /** The row of the table that holds: up to which surface temperature, soonest, latest. */
  readonly row: RecoatRow;
}

/**
 * Window for the next coat, by the table of the data sheet: the earliest counts from the last patch laid, the latest from the
 * first, and the row is that of the hottest surface that lasted an hour. Between two rows the hotter one holds.
 *
 * @example
 * ```ts
 * const window = recoatWindow({
 *   firstPatch: "2026-06-01T08:00[America/Chicago]", lastPatch: "2026-06-01T11:00[America/Chicago]", hottestSurface: "86 degF",
 *   from: "71 degF", rows: [{ upTo: "80 degF", soonest: "6 h", latest: "48 h" }, { upTo: "90 degF", soonest: "4 h", latest: "36 h" }],
 * });
 * window.earliest; // "2026-06-01T15:00-05:00[America/Chicago]"
 * window.latest; // "2026-06-02T20:00-05:00[America/Chicago]"
 * ```
 */
export const recoatWindow = /* @__PURE__ */ composed({
  id: "timing.recoat-window",
  title: "Window for the next coat",
  cautions: ["Test before the clock: nothing comes off on a finger that presses and turns. Past the window, ask the maker how the face is made ready."],
  reads: /* @__PURE__ */ nested(recoatWindowInput),
  run: ({ firstPatch, lastPatch, zone, hottestSurface: given, surface, from, rows }, work): RecoatWindow => {
    const clocks = [
      readClock(firstPatch, { path: ["firstPatch"], says: "first patch of the coat before", zone: zone ?? surface?.zone }),
      readClock(lastPatch, { path: ["lastPatch"], says: "last patch of the coat before", zone: zone ?? surface?.zone }),
    ];
    refuseAll([...troublesIn(clocks), ...outOfOrder(from, rows)], work);
    const [first, last] = clocks as readonly Clock[] as readonly [Clock, Clock];
    if (isBefore(last, first)) work.refuse({ code: "refused", path: ["lastPatch"], given: lastPatch, wanted: say("notBeforeFirstPatch") });
    if ((given === undefined) === (surface === undefined)) {
      work.refuse({ code: "either", path: ["hottest"], given: given === undefined ? "" : "hottestSurface and surface", wanted: { kind: "exactlyOne", of: ["hottestSurface", "surface"] } });
    }
    const hottest = given ?? hottestHeld(surface, first, work);
    work.stand(hottestHour);
    const row = rows.find(({ upTo }) => compare(hottest, upTo) <= 0);
    if (row === undefined || compare(hottest, from) < 0) {
      return work.refuse(refusal(["rows"], say("hottestSurface", { temperature: hottest }), say("tableGoes", { from, to: rows.at(-1)?.upTo ?? from }), "noAnswer"));
    }
    const [earliest, latest] = [clockAfter(last, row.soonest, "up"), clockAfter(first, row.latest, "down")];
    if (isBefore(latest, earliest)) {
      work.refuse(refusal([], say("earliestAndLatest", { earliest: clockText(earliest), latest: clockText(latest) }), say("windowTooShort"), "noAnswer"));
    }
    return { earliest: clockText(earliest), latest: clockText(latest), hottestSurface: hottest, row };
  },
});

/** What is wrong with the table: rows that do not rise, or a row that closes before it opens. */
function outOfOrder(from: Quantity<"temperature">, rows: readonly RecoatRow[]): readonly Trouble[] {
  if (rows.length === 0) return [refusal(["rows"], common("noneGiven", { of: "row" }), say("giveRowsOfSheet"))];
  return rows.flatMap(({ upTo, soonest, latest }, index): Trouble[] => {
    const below = rows[index - 1]?.upTo ?? from;
    const rises = compare(upTo, below) > 0 || (index === 0 && compare(upTo, below) === 0);
    return [
      ...(rises ? [] : [{ code: "refused" as const, path: ["rows", index, "upTo"], given: upTo.toString(), wanted: say("rowsRise", { below }) }]),
      ...(compare(latest, soonest) >= 0 ? [] : [{ code: "tooLow" as const, path: ["rows", index, "latest"], given: latest.toString(), wanted: say("latestUnderSoonest", { soonest }) }]),
    ];
  });
}
