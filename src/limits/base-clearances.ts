import { common } from "../core/common-refusals.js";
import { composed } from "../core/composed.js";
import { refusal } from "../core/refuse-all.js";
import { clearanceTable, limitCaution } from "../data/limits.js";
import { judge, type Judged } from "./judge.js";
import { say } from "./refusals.js";

/** Clearances at the foot of the veneer held against one text. */
export interface BaseClearances {
  readonly checks: readonly Judged[];
  /** What is under its least, in words. */
  readonly short: readonly string[];
}

/**
 * Clearances from the foot of the veneer to what lies under it, held against the least of a named text. The metric text
 * has figures of its own: 100 mm is less than 4 in.
 *
 * @example
 * ```ts
 * baseClearances({ edition: "IRC 2018", aboveEarth: "3-7/8 in", abovePaving: "2 in" }).short; // ["above earth: 3.875 in is under 4 in"]
 * baseClearances({ edition: "SBC 201 (metric)", aboveEarth: "100 mm" }).short; // []
 * ```
 */
export const baseClearances = /* @__PURE__ */ composed({
  id: "limits.base-clearances",
  title: "Clearances at the foot of the veneer",
  cautions: [limitCaution, "Measure after the soil, paving and finishes are down, at the lowest clearance; the drainage line and the flashing have rules of their own."],
  given: {
    edition: { oneOf: ["IRC 2018", "SBC 201 (metric)"], says: "text whose clearances are wanted; no other is on file" },
    aboveEarth: { is: "length", unit: ["in", "mm"], symbol: "c_e", says: "clearance above earth", atLeast: 0, optional: true },
    abovePaving: { is: "length", unit: ["in", "mm"], symbol: "c_p", says: "clearance above paving", atLeast: 0, optional: true },
    aboveWalkingSurface: { is: "length", unit: ["in", "mm"], symbol: "c_w", says: "clearance above a walking surface on the same foundation as the wall", atLeast: 0, optional: true },
  },
  run: ({ edition, aboveEarth, abovePaving, aboveWalkingSurface }, work): BaseClearances => {
    const { basis, ...least } = clearanceTable[edition];
    const measured = [
      ["above earth", aboveEarth, least.aboveEarth],
      ["above paving", abovePaving, least.abovePaving],
      ["above a walking surface", aboveWalkingSurface, least.aboveWalkingSurface],
    ] as const;
    const checks = measured.flatMap(([of, clearance, text]) => (clearance === undefined ? [] : [judge(of, clearance, { least: text, basis }, work)]));
    if (checks.length === 0) work.refuse(refusal([], common("noneGiven", { of: "clearance" }), say("giveClearances")));
    return { checks, short: checks.filter(({ verdict }) => verdict === "under").map(({ says }) => says) };
  },
});
