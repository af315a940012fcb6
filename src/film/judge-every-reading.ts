import type { Work } from "../core/composed.js";
import { compare } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { everyReadingRules } from "../data/film.js";
import { filmAllowance } from "./film-allowance.js";
import type { ReadingFailure, ReadingVerdict, Specified, Spot } from "./film-reading-input.js";
import { meanOf } from "./judge-spot-means.js";
import { say } from "./refusals.js";
import { shortShare } from "./short-share.js";

/** Judges every reading against a nominal film, and how many of them may lie below it. */
export function judgeEveryReading(rule: keyof typeof everyReadingRules, spots: readonly Spot[], { least, most }: Specified, work: Work): ReadingVerdict {
  const { low, shortOnes, shortOnesMayEqual, meanCounts, basis } = everyReadingRules[rule];
  work.stand(basis);
  if (most !== undefined) work.problem({ code: "refused", path: ["most"], given: most.toString(), wanted: say("ruleOnFileWithoutMost", { rule }) });
  const allowedLeast = work.part(filmAllowance, { specified: least, share: low }).answers.allowed;
  const all = spots.flatMap(({ readings }) => readings);
  const short = all.filter((reading) => compare(reading, least) < 0).length;
  const { share } = work.part(shortShare, { short, readings: all.length }).answers;
  const order = compare(share, quantity("ratio", shortOnes));
  const tooMany = order > 0 || (order === 0 && !shortOnesMayEqual);
  const mean = meanOf(all, work);
  const failure = (where: string, says: string): ReadingFailure => ({ where, is: "under", says: `${where}: ${says}` });
  const fails = [
    ...spots.filter(({ readings }) => readings.some((reading) => compare(reading, allowedLeast) < 0)).map(({ name }) => failure(name, `a reading is under ${allowedLeast.toString()}`)),
    ...(tooMany ? [failure("the readings", `${share.toString()} are under ${least.toString()}; ${shortOnesMayEqual ? "no more than" : "fewer than"} ${shortOnes} may be`)] : []),
    ...(meanCounts && compare(mean, least) < 0 ? [failure("the readings", `their mean of ${mean.toString()} is under ${least.toString()}`)] : []),
  ];
  return { spots: spots.map(({ name, readings }) => ({ name, mean: meanOf(readings, work) })), mean, allowedLeast, fails };
}
