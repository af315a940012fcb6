import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const movement: SamplesOf<"movement"> = {
  ruleAsksNot: { rule: "NCMA TEK 10-2B" },
  ruleGoesByHeight: { rule: "NCMA TEK 10-2B" },
  beyondWallLength: { length: quantity("length", "40 ft") },
  shapeNotSoWide: { kind: "gable" },
  tooManyJoints: { most: 200 },
  editionAsksMovement: { edition: "EJ171, older text", times: "4" },
  editionAsksNoMovement: { edition: "EJ171" },
  greatestSpacing: { spacing: quantity("length", "12 ft"), edition: "EJ171" },
};
