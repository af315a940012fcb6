import type { Limited } from "./limits.js";
import { english } from "./wording.js";

/** The limits of an input or a step in words: `at least 0`, `below 1`, `a whole number`. */
export function limitTexts(row: Limited): readonly string[] {
  const { limit: word, whole } = english.wanted;
  const limits = (["above", "atLeast", "below", "atMost"] as const).flatMap((limit) => (row[limit] === undefined ? [] : [word({ limit, value: String(row[limit]) })]));
  return row.whole === true ? [...limits, whole({})] : limits;
}
