import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import { pa2Extent, readingsAtSpot, spotMeanRules, spotsInArea } from "../data/film.js";
import { filmAllowance } from "./film-allowance.js";
import { filmMean } from "./film-mean.js";
import type { ReadingFailure, ReadingVerdict, Specified, Spot } from "./film-reading-input.js";
import { say } from "./refusals.js";

/** Judges the mean of every spot with the allowance of a rule, and the mean of the area without any. */
export function judgeSpotMeans(rule: keyof typeof spotMeanRules, spots: readonly Spot[], { least, most }: Specified, work: Work): ReadingVerdict {
  const { low, high, basis } = spotMeanRules[rule];
  work.stand(basis);
  work.stand(pa2Extent);
  if (spots.length !== spotsInArea) work.problem(refusal(["spots"], common("counted", { count: spots.length, of: "spots" }), say("spotsJudgedTogether", { rule, spots: spotsInArea })));
  for (const [index, { readings }] of spots.entries()) {
    const few = readings.length < readingsAtSpot;
    if (few) work.problem(refusal(["spots", index, "readings"], common("counted", { count: readings.length, of: "readings" }), say("spotIsMeanOf", { least: readingsAtSpot })));
  }
  if (high === undefined && most !== undefined) work.problem(refusal(["most"], most.toString(), say("ruleHasNoMost", { rule })));
  if (most === undefined) work.assume("no most is specified, so none is checked");

  const allowed = (specified: Quantity<"length">, share: typeof low | "120 %" | "125 %"): Quantity<"length"> => work.part(filmAllowance, { specified, share }).answers.allowed;
  const allowedLeast = allowed(least, low);
  const allowedMost = most === undefined || high === undefined ? undefined : allowed(most, high);
  const means = spots.map(({ name, readings }) => ({ name, mean: meanOf(readings, work) }));
  const mean = meanOf(means.map((spot) => spot.mean), work);
  const fails = [
    ...means.flatMap((spot) => limitFailures(spot.name, spot.mean, allowedLeast, allowedMost)),
    ...limitFailures("the area", mean, least, most),
  ];
  return { spots: means, mean, allowedLeast, ...(allowedMost === undefined ? {} : { allowedMost }), fails };
}

/** How a mean fails limits, if it does. */
function limitFailures(where: string, mean: Quantity<"length">, least: Quantity<"length">, most: Quantity<"length"> | undefined): readonly ReadingFailure[] {
  if (compare(mean, least) < 0) return [{ where, is: "under", says: `${where}: its mean of ${mean.toString()} is under ${least.toString()}` }];
  if (most !== undefined && compare(mean, most) > 0) return [{ where, is: "over", says: `${where}: its mean of ${mean.toString()} is over ${most.toString()}` }];
  return [];
}

/** The mean of readings, one at least. */
export function meanOf(readings: readonly Quantity<"length">[], work: Work): Quantity<"length"> {
  return work.part(filmMean, { total: sum(readings), readings: readings.length }).answers.mean;
}
