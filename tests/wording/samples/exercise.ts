import type { SamplesOf } from "./index.js";

export const exercise: SamplesOf<"exercise"> = {
  giveWholeFromTo: { least: 2, most: 15 },
  inDraws: { count: 300 },
  tooManyValues: { most: 10000 },
  limit: { limit: "atLeast", value: "3 in" },
  nothingLeft: { limits: [] },
};
