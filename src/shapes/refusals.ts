import { sentence, wordsFrom } from "../core/refusals.js";

/** Words why shapes are refused; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("shapes", {
  cornersFromTo: ({ least, most }: { least: number; most: number }) => sentence`write a list of ${least} to ${most} corners`,
  listOf: ({ count }: { count: number }) => sentence`a list of ${count}`,
  cornersOnOneLine: () => "the corners lie on one line",
  edgeWithoutLength: ({ from, to }: { from: number; to: number }) => sentence`the edge from corner ${from} to ${to} has no length; give each corner once, the outline closes by itself`,
  edgeFoldsBack: ({ from, to }: { from: number; to: number }) => sentence`the edge from corner ${from} to ${to} runs back over the one before it`,
  edgesMeet: ({ from, to, otherFrom, otherTo }: { from: number; to: number; otherFrom: number; otherTo: number }) => sentence`the edge from corner ${from} to ${to} meets the edge from corner ${otherFrom} to ${otherTo}`,
  curvedTop: () => "a curved top is not laid out; lay out the wall below it, or the box round it with the curve cut out of what is laid out",
  noArea: () => "it has no area",
  innerCorner: () => "an outline with an inner corner is not laid out; lay out its parts, or the box round it with an opening at each corner left out",
});
