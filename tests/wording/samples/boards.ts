import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const boards: SamplesOf<"boards"> = {
  layersFromOneTo: { most: 4 },
  lengthsFromOneTo: { most: 100 },
  stockFromOneTo: { most: 20 },
  mostCut: { most: 2000 },
  mostLaidOut: { most: 5000, of: "boards" },
  widthIsShortSide: { length: quantity("length", "60 in") },
  widthByLength: { width: quantity("length", "36 in"), length: quantity("length", "60 in") },
  aboutBoards: { count: 6000 },
  openingOverlaps: { other: 3 },
};
