import { sentence, wordsFrom } from "../core/refusals.js";
import { english, type Words } from "../core/wording.js";

interface LimitOf {
  readonly limit: "above" | "atLeast" | "below" | "atMost";
  readonly value: string;
}

/** Words why exercises are refused; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("exercise", {
  giveWhole: () => "give a whole number",
  giveLevel: () => "give 1, 2 or 3",
  giveWholeFromTo: ({ least, most }: { least: number; most: number }) => sentence`give a whole number from ${least} to ${most}`,
  inDraws: ({ count }: { count: number }) => sentence`in ${count} draws`,
  nothingDrawn: () => "the limits leave nothing to draw; the last draw had this",
  stepAboveNought: () => "the step must be above 0",
  tooManyValues: ({ most }: { most: number }) => sentence`these are more than ${most} values; take a wider step`,
  limit: ({ limit, value }: LimitOf) => english.wanted.limit({ limit, value }),
  whole: () => english.wanted.whole({}),
  nothingLeft: ({ limits }: { limits: readonly Words[] }) => sentence`nothing is left to draw: it must be ${limits.map(({ words }) => words).join(" and ")}`,
});
