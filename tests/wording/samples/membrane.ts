import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const membrane: SamplesOf<"membrane"> = {
  openingWide: { width: quantity("length", "12 ft") },
  noWallSoWide: { widest: quantity("length", "10 ft") },
  openingsOf: { area: quantity("area", "120 ft2") },
  wallsHave: { area: quantity("area", "100 ft2") },
};
