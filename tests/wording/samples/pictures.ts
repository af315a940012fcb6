import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const pictures: SamplesOf<"pictures"> = {
  checkHasSpots: { count: 5 },
  meanIsOther: { spot: "jamb", mean: quantity("length", "16 mil") },
  meanIsNone: { spot: "jamb" },
  otherWall: { width: "12 ft", height: "8 ft", wallWidth: "14 ft", wallHeight: "9 ft" },
  jointMeetsUngiven: { runs: "upright", place: "6 ft" },
  jointWithoutOpening: { runs: "level", place: "6 ft" },
  jointIsShorter: { runs: "upright", place: "6 ft", length: "5 ft" },
  quantityWanted: { dimension: "length" },
  dimensionWanted: { dimension: "area" },
  kindWanted: { kind: "number" },
  inTheList: { count: 1 },
  giveOrMore: { least: 2 },
  giveAnswersOf: { of: "boardLayout" },
  noLayerOfThatName: { layers: ["studs", "stone"] },
  studsFurtherApart: { width: quantity("length", "1.625 in") },
  tooManyUnits: { most: 5000 },
};
