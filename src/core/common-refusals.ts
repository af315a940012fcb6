import { sentence, wordsFrom } from "./refusals.js";

/** What is counted in a list that is given, and one of it. */
const one = {
  batches: "batch", days: "day", "heads and sills": "head or sill", heights: "height", intervals: "interval", items: "item", layers: "layer", lengths: "length",
  openings: "opening", pieces: "piece", readings: "reading", spots: "spot", stages: "stage", tasks: "task", units: "unit",
} as const;

/** What is counted in a list that is given. */
export type Counted = keyof typeof one;

/** What a list has none of. */
export type NoneOf = "clearance" | "edge" | "elevation" | "layer" | "reading" | "row" | "spot" | "wall";

/** What has its name to itself. */
export type Named = "a batch" | "a stage" | "an elevation";

/** Words a refusal that several topics have; the texts are the English. */
export const common = /* @__PURE__ */ wordsFrom("common", {
  counted: ({ count, of }: { count: number; of: Counted }) => sentence`${count} ${count === 1 ? one[of] : of}`,
  noneGiven: ({ of }: { of: NoneOf }) => sentence`no ${of} is given`,
  giveOneOrMore: () => "give one or more",
  fromOneTo: ({ most }: { most: number }) => sentence`there are from 1 to ${most}`,
  leaveOut: () => "leave it out",
  writeWhole: () => "write a whole number",
  takenName: ({ of }: { of: Named }) => sentence`there is ${of} of this name already; give each its own`,
  heightsOfUnits: () => "give 1 to 100 heights of units, course by course",
});
