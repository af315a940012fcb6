import type { SamplesOf } from "./index.js";

export const common: SamplesOf<"common"> = {
  counted: { count: 1001, of: "heads and sills" },
  noneGiven: { of: "reading" },
  fromOneTo: { most: 100 },
  takenName: { of: "an elevation" },
};
