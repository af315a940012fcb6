import type { DimensionName } from "../core/dimensions.js";
import type { Quantity } from "../core/quantity.js";
import { text, wordsFrom } from "../core/refusals.js";

type Runs = "upright" | "level";
type Kind = "string" | "number" | "boolean";

/** Why pictures are refused, in English. */
export const picturesRefusals = {
  timeWanted: () => "a time with its distance from UTC is wanted, as the answers have it",
  layoutHasNoScrews: () => "the layout has none; lay the boards out with screws, or leave them out here",
  checkHasSpots: ({ count }: { count: number }) => text`the check has ${count}; give the readings that it was made of`,
  meanIsOther: ({ spot, mean }: { spot: string; mean: Quantity }) => text`these readings do not have the mean of ${spot} in the check, ${mean}; give the readings that it was made of`,
  meanIsNone: ({ spot }: { spot: string }) => text`these readings do not have the mean of ${spot} in the check, which has none; give the readings that it was made of`,
  otherWall: ({ width, height, wallWidth, wallHeight }: { width: string; height: string; wallWidth: string; wallHeight: string }) => text`it was laid out on a wall ${width} wide and ${height} high, and this one is ${wallWidth} by ${wallHeight}`,
  jointMeetsUngiven: ({ runs, place }: { runs: Runs; place: string }) => text`the ${runs} movement joint at ${place} meets an opening that is not given here`,
  jointWithoutOpening: ({ runs, place }: { runs: Runs; place: string }) => text`the ${runs} movement joint at ${place} was laid out without the opening it meets here`,
  jointIsShorter: ({ runs, place, length }: { runs: Runs; place: string; length: string }) => text`the ${runs} joint at ${place} is ${length} long, and no opening given here shortens it; give the openings of the layout, and a wall with four square corners`,
  quantityWanted: ({ dimension }: { dimension: DimensionName }) => text`it is to be a quantity of ${dimension}, as the answers have it; what comes from JSON is none any more`,
  dimensionWanted: ({ dimension }: { dimension: DimensionName }) => text`${dimension} is wanted`,
  kindWanted: ({ kind }: { kind: Kind }) => text`a ${kind} is wanted`,
  listWanted: () => "a list is wanted",
  inTheList: ({ count }: { count: number }) => text`${count} in the list`,
  giveOrMore: ({ least }: { least: number }) => text`give ${least} or more`,
  objectWanted: () => "an object is wanted",
  giveAnswersOf: ({ of }: { of: string }) => text`give the answers of ${of} as they came`,
  giveIntervals: () => "give the intervals of a record by the clock",
  noLayerOfThatName: ({ layers }: { layers: readonly string[] }) => text`none of its layers has the name of one here; the section has ${layers}`,
  layerThickerThanNought: () => "a layer is thicker than nought",
  studsFurtherApart: ({ width }: { width: Quantity }) => text`studs ${width} wide stand further apart than that`,
  hoursInOrder: () => "the hours stand in the order of time, each once",
  tooManyUnits: ({ most }: { most: number }) => text`more than ${most} cannot be told apart on a sheet; draw a part of the wall`,
  panelBeyondWall: () => "its courses or its bond reach beyond the wall; give the panel its own height and length, and its place",
};

/** Words a refusal of this room. */
export const say = /* @__PURE__ */ wordsFrom("pictures", picturesRefusals);
