import { quantity } from "../../../src/core/index.js";
import type { SamplesOf } from "./index.js";

export const layout: SamplesOf<"layout"> = {
  shortLegOverLong: { longLeg: quantity("length", "8 in") },
  closesWithJoints: { units: 24, called: "courses", joint: quantity("length", "0.5 in") },
  noWholeNumberCloses: { called: "units" },
  oneCutTooSmall: { called: "courses", leastCut: quantity("length", "2 in") },
  twoCutTooSmall: { called: "units", leastCut: quantity("length", "4 in") },
  jointsDoNotFill: { least: quantity("length", "0.25 in"), most: quantity("length", "0.5 in"), why: [] },
  filledByAtMost: { most: 1000, called: "units" },
  stubUnderLegs: { leg: quantity("length", "8 in") },
  cornersLeaveNoRoom: { course: 2 },
  datumTells: { datum: "unit to unit" },
  jointUnderNarrowest: { least: quantity("length", "0.25 in") },
  jointOverWidest: { most: quantity("length", "0.5 in") },
  headUnderSill: { sill: quantity("length", "36 in") },
  oneTo: { most: 1000 },
  withinCourses: { most: 1000 },
  longestShorterEnd: { length: quantity("length", "3 in") },
  nextCourseUnderLeast: { first: quantity("length", "8 in"), last: quantity("length", "5 in"), next: [], leastCut: quantity("length", "4 in") },
};
