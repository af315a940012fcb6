import { common } from "../core/common-refusals.js";
import type { Quantity } from "../core/quantity.js";
import { compare, sum, times } from "../core/quantity-arithmetic.js";
import { quantity, type Readable } from "../core/read-quantity.js";
import type { FilmReadingCheck } from "../film/film-reading-check.js";
import { say } from "./refusals.js";
import { answersOf, having, listOf, type Look, maybe, measured, oneOf, plain, refuse, written } from "./results.js";

/** One reading with a tooth gauge, as the check was given it. */
export interface FilmTeeth {
  readonly lastWetTooth: Readable<"length">;
  readonly firstDryTooth?: Readable<"length">;
}

/** A coat with its readings, as the check was given them, and what came of it. */
export interface FilmCoat {
  readonly name: string;
  /** The answers of `filmReadingCheck`. */
  readonly check: FilmReadingCheck;
  readonly spots: readonly { readonly readings?: readonly Readable<"length">[]; readonly teeth?: readonly FilmTeeth[] }[];
  /** What the coat was to come to, such as the answers of `dryFilm` have it. */
  readonly expected?: Readable<"length">;
}

/** What a chart of film is drawn from. */
export interface FilmRecord {
  readonly coats: readonly FilmCoat[];
}

/** A coat that has been read. */
export interface ReadCoat {
  readonly name: string;
  readonly check: FilmReadingCheck;
  readonly spots: readonly ReadSpot[];
  readonly expected?: Quantity<"length">;
}

/** A spot that has been read: its readings, and for each tooth gauge the ends of what it tells. */
export interface ReadSpot {
  readonly name: string;
  readonly mean?: Quantity<"length">;
  readonly readings: readonly Quantity<"length">[];
  readonly brackets: readonly { readonly from: Quantity<"length">; readonly until?: Quantity<"length"> }[];
  /** How it fails, if it does. */
  readonly fails: readonly string[];
}

/** What a chart of film is drawn from, looked at. */
export const drawnCoats = /* @__PURE__ */ ((): Look => {
  const length = measured("length");
  const check = answersOf("filmReadingCheck", {
    film: oneOf("wet", "dry"),
    rule: plain("string"),
    passes: plain("boolean"),
    spots: listOf(having({ name: plain("string"), mean: maybe(length) }), 1),
    mean: maybe(length),
    allowedLeast: length,
    allowedMost: maybe(length),
    fails: listOf(having({ where: plain("string"), is: oneOf("under", "over", "perhaps over"), says: plain("string") })),
  });
  const teeth = having({ lastWetTooth: written("length"), firstDryTooth: maybe(written("length")) });
  const spot = having({ readings: maybe(listOf(written("length"))), teeth: maybe(listOf(teeth)) });
  return having({ coats: listOf(having({ name: plain("string"), check, spots: listOf(spot, 1), expected: maybe(written("length")) }), 1) });
})();

/** Reads the coats; readings that another check was made of are refused. */
export function readCoats(id: string, coats: readonly FilmCoat[]): readonly ReadCoat[] {
  const length = (given: Readable<"length">): Quantity<"length"> => quantity("length", given);
  return coats.map(({ name, check, spots, expected }, index) => {
    if (spots.length !== check.spots.length) refuse(id, ["coats", index, "spots"], common("counted", { count: spots.length, of: "spots" }), say("checkHasSpots", { count: check.spots.length }));
    const read = spots.map(({ readings = [], teeth = [] }, place): ReadSpot => {
      const { name: of = "", mean } = check.spots[place] ?? {};
      const all = readings.map(length);
      const same = mean === undefined ? all.length === 0 : all.length > 0 && compare(sum(all), times(mean, all.length)) === 0;
      if (!same) refuse(id, ["coats", index, "spots", place], "", mean === undefined ? say("meanIsNone", { spot: of }) : say("meanIsOther", { spot: of, mean }));
      const brackets = teeth.map(({ lastWetTooth, firstDryTooth }) => ({ from: length(lastWetTooth), ...(firstDryTooth === undefined ? {} : { until: length(firstDryTooth) }) }));
      const fails = [...new Set(check.fails.filter(({ where }) => where === of).map(({ is }) => is))];
      return { name: of, readings: all, brackets, fails, ...(mean === undefined ? {} : { mean }) };
    });
    return { name, check, spots: read, ...(expected === undefined ? {} : { expected: length(expected) }) };
  });
}
