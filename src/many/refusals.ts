import { sentence, wordsFrom } from "../core/refusals.js";

/** Why columns are refused, in English. */
export const manyRefusals = {
  columnsOfOneLength: ({ count, other, otherCount }: { count: number; other: string; otherCount: number }) => sentence`has ${count} numbers where ${other} has ${otherCount}`,
  giveColumns: () => "give at least one input as { values, unit }",
  giveNumbers: () => "give a list of numbers or a Float64Array as its values",
};

/** Words a refusal of this room. */
export const say = /* @__PURE__ */ wordsFrom("many", manyRefusals);
