import type { SamplesOf } from "./index.js";

export const shapes: SamplesOf<"shapes"> = {
  cornersFromTo: { least: 3, most: 100 },
  listOf: { count: 2 },
  edgeWithoutLength: { from: 2, to: 3 },
  edgeFoldsBack: { from: 2, to: 3 },
  edgesMeet: { from: 1, to: 2, otherFrom: 4, otherTo: 5 },
};
