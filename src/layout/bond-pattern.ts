import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { usualCornerLegs, usualLap } from "../data/layout.js";
import { nested } from "../schema/nested.js";
import { type BondCourse, lapOf } from "./bond-course.js";
import { bondInput, type ReadBond } from "./bond-input.js";
import { cornerCourses } from "./corner-courses.js";
import { checkJointRange } from "./joint-range.js";
import { plainCourses } from "./plain-courses.js";
import { say } from "./refusals.js";

/** A bond pattern: two courses that come again and again, one over the other. */
export interface BondPattern {
  /** The first course and the one over it, from left to right. */
  readonly courses: readonly [BondCourse, BondCourse];
  /** The least distance between the head joints of the two; absent where a course has none. */
  readonly lap?: Quantity<"length">;
  /** Whole flat units in all courses, where their number was given. */
  readonly wholeUnits?: Quantity<"count">;
  /** Cut flat units in all courses, each from a unit of its own. */
  readonly cutUnits?: Quantity<"count">;
}

/**
 * Units of a course and of the one over it, laid out from end to end. Corner units come first, long and short leg turned
 * about, and the field between them closes by its joints, or by cut units away from the corners: one, or two alike side
 * by side where one would be a sliver. Without corners the course closes with whole units, or with whole units and a
 * half where the offset is half; else it is centred with the same cut at both ends. No piece is under the least cut.
 *
 * @example
 * ```ts
 * const pier = bondPattern({
 *   length: "95-5/8 in", unitLength: "11-5/8 in", headJoint: { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" },
 *   left: { kind: "plain" }, right: { kind: "plain" }, offset: "50 %", courses: 10,
 * });
 * pier.courses[0].wholeUnits; // 8
 * pier.courses[1].leastCutLength; // "5.625 in"
 * pier.lap; // "6 in"
 * pier.wholeUnits; // "75"
 * ```
 */
export const bondPattern = /* @__PURE__ */ composed({
  id: "layout.bond-pattern",
  title: "Bond pattern of a wall",
  reads: /* @__PURE__ */ nested(bondInput),
  run: layBond,
});

function layBond(given: ReadBond, work: Work): BondPattern {
  const { unitLength, headJoint, left, right, offset } = given;
  checkJointRange(headJoint, "headJoint", work);
  [left, right].forEach((end, index) => {
    if (end.kind === "corner" && compare(end.shortLeg, end.longLeg) > 0) work.problem({ code: "tooHigh", path: [index === 0 ? "left" : "right", "shortLeg"], given: end.shortLeg.toString(), wanted: say("shortLegOverLong", { longLeg: end.longLeg }) });
  });
  const courses = coursesOf(given, work);
  const lap = lapOf(...courses);
  const stacked = offset !== undefined && compare(offset, quantity("ratio", 0)) === 0;
  if (lap !== undefined && !stacked && compare(times(lap, 4), unitLength) < 0) {
    work.caution(`Head joints of the two courses come within ${lap.toString()} of each other; common practice is a quarter of the unit or more. Other corner legs, or a cut elsewhere, part them.`);
    work.stand(usualLap);
  }
  if (courses.some(({ cutUnits }) => cutUnits > 0)) work.caution("Cut stone wet or with dust drawn off at the blade: its dust harms the lungs.");
  return { courses, ...(lap === undefined ? {} : { lap }), ...totals(courses, given.courses) };
}

function coursesOf(given: ReadBond, work: Work): readonly [BondCourse, BondCourse] {
  const { left, right, offset } = given;
  if (left.kind === "corner" || right.kind === "corner") {
    if (offset !== undefined) work.problem({ code: "refused", path: ["offset"], given: offset.toString(), wanted: say("legsSetOffset") });
    work.assume(usualCornerLegs.says);
    work.stand(usualCornerLegs);
    return cornerCourses(given, work);
  }
  if (offset === undefined) return work.refuse({ code: "missing", path: ["offset"], given: "", wanted: say("offsetMustBeTold") });
  return plainCourses(given, offset, work);
}

/** The first pattern course lies in every odd course, the other in every even one. */
function totals([first, second]: readonly [BondCourse, BondCourse], courses: number | undefined): Pick<BondPattern, "wholeUnits" | "cutUnits"> {
  if (courses === undefined) return {};
  const [odd, even] = [Math.ceil(courses / 2), Math.floor(courses / 2)];
  const total = (key: "wholeUnits" | "cutUnits"): Quantity<"count"> => quantity("count", odd * first[key] + even * second[key]);
  return { wholeUnits: total("wholeUnits"), cutUnits: total("cutUnits") };
}
