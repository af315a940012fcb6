import type { Quantity } from "../core/quantity.js";
import { sentence, wordsFrom } from "../core/refusals.js";
import type { Words } from "../core/wording.js";

type Called = "courses" | "units";

/** Words why the functions for layouts refuse; the texts are the English. */
export const say = /* @__PURE__ */ wordsFrom("layout", {
  shortLegOverLong: ({ longLeg }: { longLeg: Quantity }) => sentence`at most the long leg, ${longLeg}`,
  legsSetOffset: () => "the legs of the corner units set the offset; leave it out",
  offsetMustBeTold: () => 'without corner units it must be told; write "50 %" for half bond, 0 where head joints stand in line',
  closesWithJoints: ({ units, called, joint }: { units: number; called: Called; joint: Quantity }) => sentence`${units} ${called} close with joints of ${joint}`,
  noWholeNumberCloses: ({ called }: { called: Called }) => sentence`no whole number of ${called} closes`,
  oneCutTooSmall: ({ called, leastCut }: { called: Called; leastCut: Quantity }) => sentence`with one of the ${called} cut there is less than ${leastCut} for each`,
  twoCutTooSmall: ({ called, leastCut }: { called: Called; leastCut: Quantity }) => sentence`with two of the ${called} cut there is less than ${leastCut} for each`,
  jointsDoNotFill: ({ least, most, why }: { least: Quantity; most: Quantity; why: readonly Words[] }) => sentence`joints of ${least} to ${most} do not fill it: ${why}; give another length or height, a wider range of joints, or a smaller leastCut`,
  oneUnitFills: () => "one unit fills it by itself, and there is no joint to be worked out",
  filledByAtMost: ({ most, called }: { most: number; called: Called }) => sentence`filled by ${most} ${called} at most`,
  stubUnderLegs: ({ leg }: { leg: Quantity }) => sentence`it is under twice a leg of ${leg}, and corner units cannot turn about on so short a stub; cut them for the place, one by one`,
  cornersLeaveNoRoom: ({ course }: { course: number }) => sentence`the corner units of course ${course} leave no room between them`,
  sayWhereBedJointLies: () => 'write "under the unit", or "over the unit" where the first unit stands on a ledger',
  datumTells: ({ datum }: { datum: string }) => sentence`from ${datum} tells where the joints lie; leave it out`,
  jointUnderNarrowest: ({ least }: { least: Quantity }) => sentence`at least the narrowest joint, ${least}`,
  jointOverWidest: ({ most }: { most: Quantity }) => sentence`at most the widest joint, ${most}`,
  levelFootCutsNothing: () => "with a level foot nothing is cut under the ledger; leave it out",
  waitNeedsAll: () => "the wait needs timeAtReference, reference, temperature and rule together; give all four or none",
  anotherElevation: () => "another elevation has this name; give each its own",
  sillHeadOrBoth: () => "give a sill, a head or both",
  headUnderSill: ({ sill }: { sill: Quantity }) => sentence`above the sill, ${sill}`,
  oneTo: ({ most }: { most: number }) => sentence`give 1 to ${most}`,
  withinCourses: ({ most }: { most: number }) => sentence`within ${most} courses of the base line`,
  twoUnitsOrMore: () => "a course takes two units or more",
  endPiecesDoNotComeOut: () => "its end pieces do not come out",
  longestShorterEnd: ({ length }: { length: Quantity }) => sentence`the longest that its shorter end piece can be is ${length}`,
  nextCourseUnderLeast: ({ first, last, next, leastCut }: { first: Quantity; last: Quantity; next: readonly Words[]; leastCut: Quantity }) => sentence`the first course ends in pieces of ${first} and ${last}, and with this offset ${next} in the next, under the least cut of ${leastCut}; give a smaller leastCut, another offset, or a wider range of joints`,
});
