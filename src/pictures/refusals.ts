import type { DimensionName } from "../core/dimensions.js";
import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";

type Runs = "upright" | "level";
type Kind = "string" | "number" | "boolean";

/** Words why pictures are refused; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("pictures", {
  timeWanted: () => "a time with its distance from UTC is wanted, as the answers have it",
  layoutHasNoScrews: () => "the layout has none; lay the boards out with screws, or leave them out here",
  checkHasSpots: ({ count }: { count: number }) => sentence`the check has ${count}; give the readings that it was made of`,
  meanIsOther: ({ spot, mean }: { spot: string; mean: Quantity }) => sentence`these readings do not have the mean of ${spot} in the check, ${mean}; give the readings that it was made of`,
  meanIsNone: ({ spot }: { spot: string }) => sentence`these readings do not have the mean of ${spot} in the check, which has none; give the readings that it was made of`,
  otherWall: ({ width, height, wallWidth, wallHeight }: { width: string; height: string; wallWidth: string; wallHeight: string }) => sentence`it was laid out on a wall ${width} wide and ${height} high, and this one is ${wallWidth} by ${wallHeight}`,
  jointMeetsUngiven: ({ runs, place }: { runs: Runs; place: string }) => sentence`the ${runs} movement joint at ${place} meets an opening that is not given here`,
  jointWithoutOpening: ({ runs, place }: { runs: Runs; place: string }) => sentence`the ${runs} movement joint at ${place} was laid out without the opening it meets here`,
  jointIsShorter: ({ runs, place, length }: { runs: Runs; place: string; length: string }) => sentence`the ${runs} joint at ${place} is ${length} long, and no opening given here shortens it; give the openings of the layout, and a wall with four square corners`,
  quantityWanted: ({ dimension }: { dimension: DimensionName }) => sentence`it is to be a quantity of ${dimension}, as the answers have it; what comes from JSON is none any more`,
  dimensionWanted: ({ dimension }: { dimension: DimensionName }) => sentence`${dimension} is wanted`,
  kindWanted: ({ kind }: { kind: Kind }) => sentence`a ${kind} is wanted`,
  listWanted: () => "a list is wanted",
  inTheList: ({ count }: { count: number }) => sentence`${count} in the list`,
  giveOrMore: ({ least }: { least: number }) => sentence`give ${least} or more`,
  objectWanted: () => "an object is wanted",
  giveAnswersOf: ({ of }: { of: string }) => sentence`give the answers of ${of} as they came`,
  giveIntervals: () => "give the intervals of a record by the clock",
  noLayerOfThatName: ({ layers }: { layers: readonly string[] }) => sentence`none of its layers has the name of one here; the section has ${layers}`,
  layerThickerThanNought: () => "a layer is thicker than nought",
  studsFurtherApart: ({ width }: { width: Quantity }) => sentence`studs ${width} wide stand further apart than that`,
  hoursInOrder: () => "the hours stand in the order of time, each once",
  tooManyUnits: ({ most }: { most: number }) => sentence`more than ${most} cannot be told apart on a sheet; draw a part of the wall`,
  panelBeyondWall: () => "its courses or its bond reach beyond the wall; give the panel its own height and length, and its place",
});
