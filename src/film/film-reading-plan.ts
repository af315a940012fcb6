import { composed } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { readingsBySize } from "../data/film.js";
import { readingAreas } from "./reading-areas.js";
import { readingAreasPa2 } from "./reading-areas-pa2.js";
import { say } from "./refusals.js";

/** How many film readings, and how they lie at a spot. */
export interface FilmReadingPlan {
  readonly rule: string;
  readonly areas: Quantity<"count">;
  readonly spots: Quantity<"count">;
  /** The least that will do. */
  readonly readings: Quantity<"count">;
  /** How the readings of one spot lie; absent where the rule is your own. */
  readonly spot?: string;
}

/**
 * How many areas, spots and readings of film a coated area gets, by a published rule or by your own (`rule: "own"` with the
 * size of an area, its spots and their readings).
 *
 * @example
 * ```ts
 * const plan = filmReadingPlan({ area: "1001 ft2", rule: "SSPC-PA 2" });
 * plan.areas.toString(); // "4"
 * plan.readings.toString(); // "60"
 * plan.spot; // "readings within a circle of 1.5 in"
 * ```
 */
export const filmReadingPlan = /* @__PURE__ */ composed({
  id: "film.film-reading-plan",
  title: "Plan of film readings",
  given: {
    area: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "area that is coated", above: 0 },
    rule: { oneOf: ["SSPC-PA 2", "SSPC-PA 9", "IMO PSPC", "own"], says: "rule that counts the readings" },
    areaSize: { is: "area", unit: ["ft2", "m2"], symbol: "A_1", says: "size of one area of readings, by your own rule", above: 0, optional: true },
    spotsPerArea: { is: "count", symbol: "s", says: "spots in an area, by your own rule", atLeast: 1, whole: true, optional: true },
    readingsPerSpot: { is: "count", symbol: "r", says: "readings at a spot, by your own rule", atLeast: 1, whole: true, optional: true },
  },
  run: ({ area, rule, areaSize, spotsPerArea, readingsPerSpot }, work): FilmReadingPlan => {
    const own = [["areaSize", areaSize], ["spotsPerArea", spotsPerArea], ["readingsPerSpot", readingsPerSpot]] as const;
    if (rule === "own") {
      if (areaSize === undefined || spotsPerArea === undefined || readingsPerSpot === undefined) {
        const missing = own.filter(([, value]) => value === undefined).map(([name]) => name);
        return work.refuse({ code: "missing", path: missing.slice(0, 1), given: "", wanted: say("ownRuleNeeds", { names: missing }) });
      }
      const { areas, spots, readings } = work.part(readingAreas, { area, areaSize, spotsPerArea, readingsPerSpot }).answers;
      return { rule, areas, spots, readings };
    }
    for (const [name, value] of own) {
      if (value !== undefined) work.problem({ code: "refused", path: [name], given: "", wanted: say("ruleHasItsOwn", { rule }) });
    }
    if (rule === "SSPC-PA 2") {
      const { areas, spots, readings } = work.part(readingAreasPa2, { area }).answers;
      return { rule, areas, spots, readings, spot: "readings within a circle of 1.5 in" };
    }
    const { spot, basis, ...size } = readingsBySize[rule];
    work.stand(basis);
    const { areas, spots, readings } = work.part(readingAreas, { area, ...size }).answers;
    return { rule, areas, spots, readings, spot };
  },
});
