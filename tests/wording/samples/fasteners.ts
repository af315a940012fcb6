import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const fasteners: SamplesOf<"fasteners"> = {
  endsPastStud: { width: quantity("length", "36 in"), past: quantity("length", "4 in") },
  backTheEdgesOrCut: { cutTo: quantity("length", "32 in") },
  strengthLevelBy: { edition: "ASCE 7-05" },
  speedAtLevel: { level: "allowable" },
  mapsGiveLevel: { edition: "ASCE 7-10", level: "strength" },
  noSuchFactor: { edition: "ASCE 7-10" },
  hasThisFactor: { edition: "ASCE 7-16" },
};
