import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why columns are refused; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("many", {
  columnsOfOneLength: ({ count, other, otherCount }: { count: number; other: string; otherCount: number }) => sentence`has ${count} ${count === 1 ? "number" : "numbers"} where ${other} has ${otherCount}`,
  giveColumns: () => "give at least one input as { values, unit }",
  giveNumbers: () => "give a list of numbers or a Float64Array as its values",
});
