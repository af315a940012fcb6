import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import { compare } from "../core/quantity-arithmetic.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { type everyReadingRules, spotMeanRules } from "../data/film.js";
import { nested } from "../schema/nested.js";
import { filmReadingInput, type ReadingFailure, type ReadingVerdict, type Specified, type Spot } from "./film-reading-input.js";
import { judgeBand } from "./judge-band.js";
import { judgeEveryReading } from "./judge-every-reading.js";
import { judgeSpotMeans } from "./judge-spot-means.js";
import { say } from "./refusals.js";

/** Whether film readings pass, which spots do not, and what to do next. */
export interface FilmReadingCheck extends ReadingVerdict {
  readonly film: "wet" | "dry";
  readonly rule: string;
  readonly passes: boolean;
  /** What to do about what fails; empty where nothing does. */
  readonly next: readonly string[];
}

/**
 * Checks the readings of a film, wet or dry, by a rule that is named. A dry film is judged by the means of its spots and of
 * its area (SSPC-PA 2, SSPC-PA 9), by every reading (ISO 19840, IMO PSPC), or by a band of your own; a wet film by a band of
 * your own alone, each coat by itself. Common practice for a barrier in two coats is 15 to 22 mil wet each.
 *
 * @example
 * ```ts
 * const coat = filmReadingCheck({ film: "wet", rule: "band", least: "15 mil", most: "22 mil", spots: [{ readings: ["16 mil", "18 mil"] }, { readings: ["14 mil"] }] });
 * coat.passes; // false
 * coat.fails[0].says; // "spot 2: 14 mil is under 15 mil"
 * ```
 */
export const filmReadingCheck = /* @__PURE__ */ composed({
  id: "film.film-reading-check",
  title: "Check of film readings",
  reads: /* @__PURE__ */ nested(filmReadingInput),
  run: ({ film, rule, least, most, spots: given }, work): FilmReadingCheck => {
    const spots = given.map(({ name, readings = [], teeth = [] }, index): Spot => ({ name: name ?? `spot ${String(index + 1)}`, readings, teeth }));
    if (most !== undefined && compare(most, least) < 0) work.problem({ code: "tooLow", path: ["most"], given: most.toString(), wanted: say("mostUnderLeast", { least }) });
    refuseUnread(film, spots, work);
    if (film === "wet" && rule !== "band") {
      work.refuse({ code: "refused", path: ["rule"], given: rule, wanted: say("ruleForDryFilm") });
    }
    if (film === "wet" && spots.some(({ readings }) => readings.length > 0)) {
      work.caution("A figure from a gauge with teeth is the tooth that is wet, and the film may reach the next: give teeth to have both ends judged.");
    }
    work.caution(film === "wet" ? "A wet film steers the work; what is accepted is the dry film." : "What the specification and the data sheet say comes before any rule here.");
    const verdict = judge(rule, spots, { least, most }, work);
    return { film, rule, passes: verdict.fails.length === 0, ...verdict, next: nextSteps(film, rule, verdict.fails) };
  },
});

/** Ends the run where a spot has no reading, or one that tells nothing of such a film. */
function refuseUnread(film: "wet" | "dry", spots: readonly Spot[], work: Work): void {
  const faults: Trouble[] = spots.flatMap(({ readings, teeth }, index) => {
    if (film === "dry" && teeth.length > 0) return [refusal(["spots", index, "teeth"], "", say("teethReadWetFilm"))];
    if (readings.length + teeth.length > 0) return [];
    return [refusal(["spots", index], "", say(film === "wet" ? "giveReadingsOrTeeth" : "giveReadings"))];
  });
  if (spots.length === 0) faults.push(refusal(["spots"], common("noneGiven", { of: "spot" }), common("giveOneOrMore")));
  refuseAll(faults, work);
}

type Rule = keyof typeof spotMeanRules | keyof typeof everyReadingRules | "band";

function judge(rule: Rule, spots: readonly Spot[], specified: Specified, work: Work): ReadingVerdict {
  if (rule === "band") return judgeBand(spots, specified, work);
  if (rule === "ISO 19840" || rule === "IMO PSPC") return judgeEveryReading(rule, spots, specified, work);
  if (rule.startsWith("SSPC-PA 2")) work.caution("SSPC-PA 2 is written for metal; SSPC-PA 9 is the nearer rule for boards and blocks.");
  return judgeSpotMeans(rule, spots, specified, work);
}

function nextSteps(film: "wet" | "dry", rule: Rule, fails: readonly ReadingFailure[]): readonly string[] {
  const any = (...ways: readonly ReadingFailure["is"][]): boolean => fails.some(({ is }) => ways.includes(is));
  if (film === "wet") {
    return [
      ...(any("under") ? ["Put on more while the film is wet, mend the mark of the gauge, and read again beside it."] : []),
      ...(any("over") ? ["Roll the excess out while the film is wet, and read again."] : []),
      ...(any("perhaps over") ? ["Read again with a gauge that has a longer tooth."] : []),
    ];
  }
  const spotFails = Object.hasOwn(spotMeanRules, rule) && fails.some(({ where }) => where !== "the area");
  return [
    ...(spotFails ? ["From each spot that fails, read a spot every 5 ft (1.5 m) in each direction until two in a row pass; these spots have no allowance."] : []),
    ...(any("under") ? ["Where the film is under, add to it within the recoat window of the data sheet, and read again."] : []),
    ...(any("over") ? ["Where the film is over, ask the maker what so thick a film does and how it is mended."] : []),
  ];
}
