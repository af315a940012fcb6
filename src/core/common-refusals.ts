import { sentence, wordsFrom } from "./refusals.js";

/** What is counted in a list that is given. */
export type Counted =
  | "batches" | "days" | "heads and sills" | "heights" | "intervals" | "items" | "layers" | "lengths" | "openings" | "pieces" | "readings"
  | "spots" | "stages" | "tasks" | "units";

/** What a list has none of. */
export type NoneOf = "clearance" | "edge" | "elevation" | "layer" | "reading" | "row" | "spot" | "wall";

/** What has its name to itself. */
export type Named = "a batch" | "a stage" | "an elevation";

/** Words a refusal that several topics have; the texts are the English. */
export const common = /* @__PURE__ */ wordsFrom("common", {
  counted: ({ count, of }: { count: number; of: Counted }) => sentence`${count} ${of}`,
  noneGiven: ({ of }: { of: NoneOf }) => sentence`no ${of} is given`,
  giveOneOrMore: () => "give one or more",
  fromOneTo: ({ most }: { most: number }) => sentence`there are from 1 to ${most}`,
  leaveOut: () => "leave it out",
  writeWhole: () => "write a whole number",
  takenName: ({ of }: { of: Named }) => sentence`there is ${of} of this name already; give each its own`,
  heightsOfUnits: () => "give 1 to 100 heights of units, course by course",
});
