import type { Work } from "../core/composed.js";
import type { Path } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { compare } from "../core/quantity-arithmetic.js";
import type { ReadingFailure, ReadingVerdict, Specified, Spot, Teeth } from "./film-reading-input.js";
import { meanOf } from "./judge-spot-means.js";
import { wetFilmBracket } from "./wet-film-bracket.js";

/** Judges every reading by a band of the user's own: a bracket at its lower end against the least, at its upper against the most. */
export function judgeBand(spots: readonly Spot[], specified: Specified, work: Work): ReadingVerdict {
  const { least, most } = specified;
  if (most === undefined) work.assume("no most is specified, so none is checked");
  const fails = spots.flatMap(({ name, readings, teeth }, place) => [
    ...readings.flatMap((reading) => readingFailures(name, reading, specified)),
    ...teeth.flatMap((pair, index) => teethFailures(name, pair, specified, ["spots", place, "teeth", index], work)),
  ]);
  const means = spots.map(({ name, readings }) => (readings.length === 0 ? { name } : { name, mean: meanOf(readings, work) }));
  return { spots: means, allowedLeast: least, ...(most === undefined ? {} : { allowedMost: most }), fails };
}

function readingFailures(where: string, reading: Quantity<"length">, { least, most }: Specified): readonly ReadingFailure[] {
  if (compare(reading, least) < 0) return [{ where, is: "under", says: `${where}: ${reading.toString()} is under ${least.toString()}` }];
  if (most !== undefined && compare(reading, most) > 0) return [{ where, is: "over", says: `${where}: ${reading.toString()} is over ${most.toString()}` }];
  return [];
}

function teethFailures(where: string, { lastWetTooth, firstDryTooth }: Teeth, { least, most }: Specified, path: Path, work: Work): readonly ReadingFailure[] {
  const dry = firstDryTooth === undefined ? {} : { firstDryTooth };
  const limit = most === undefined ? {} : { most };
  const { leastReached, mostKept } = work.part(wetFilmBracket, { lastWetTooth, ...dry, least, ...limit }, path).answers;
  const fails: ReadingFailure[] = [];
  if (leastReached === "no") fails.push({ where, is: "under", says: `${where}: it may be as thin as ${lastWetTooth.toString()}, under ${least.toString()}` });
  if (most !== undefined && mostKept === "no") {
    const upper = firstDryTooth === undefined ? `it is at least ${lastWetTooth.toString()}` : `it may be as thick as ${firstDryTooth.toString()}`;
    fails.push({ where, is: "over", says: `${where}: ${upper}, over ${most.toString()}` });
  }
  if (most !== undefined && mostKept === "cannot be told") fails.push({ where, is: "perhaps over", says: `${where}: the highest tooth is wet, so it cannot be told whether it is over ${most.toString()}` });
  return fails;
}
