import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { subtract } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { refusal } from "../core/refuse-all.js";
import { markRounding } from "../data/layout.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { type ClosedRun, closeRun, type ClosingJoint, sizeAt } from "./close-run.js";
import { checkJointRange, jointRange } from "./joint-range.js";
import { say } from "./refusals.js";
import { type RodCourse, rodCourses, tapes } from "./story-rod.js";

const coursingInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    height: quantityField("length", { says: "height to be coursed, from its lower end to its upper", above: 0 }),
    /** Course by course from the foot; they begin again at the end of the list. */
    unitHeights: telling("face heights of the units, course by course", z.array(quantityField("length", { says: "actual face height of the units of a course", above: 0 }))),
    bedJoint: telling("level joints: least, wanted and most", jointRange()),
    /** What the height begins and ends with. */
    datum: telling("what the height is measured between", z.enum(["bed to bed", "unit to unit", "opening"])),
    /** From bed to bed alone: on a ledger the first unit has no joint under it. */
    bedJointLies: z.optional(telling("whether the level joint of a course lies under its unit or over it", z.enum(["under the unit", "over the unit"]))),
    leastCut: z.optional(quantityField("length", { says: "least height of a cut course", above: 0 })),
    tape: telling("finest part of the tape", z.enum(tapes)),
  }));

type ReadCoursing = z.output<ReturnType<typeof coursingInput>>;

/** How a height is coursed. */
export interface Coursing {
  /** All courses, cut ones counted. */
  readonly courses: Quantity<"count">;
  readonly wholeCourses: Quantity<"count">;
  /** Courses of cut units: none, the top one, or the lowest and the top one alike. */
  readonly cutCourses: Quantity<"count">;
  /** Face height of the cut units. */
  readonly cutHeight?: Quantity<"length">;
  readonly bedJoint: Quantity<"length">;
  /** What each joint is wider than wanted; below nought where it is narrower. */
  readonly perJoint: Quantity<"length">;
  /** The whole numbers of courses nearest to what the wanted joint gives. */
  readonly closing: readonly ClosingJoint[];
  /** The marks of a story rod, from the foot up. */
  readonly storyRod: readonly RodCourse[];
}

/**
 * Courses in a height: the number whose joint is nearest to the one wanted, where one lies in the range; else whole courses
 * with the wanted joint and a cut one on top, or one cut alike at the foot and on top, none under the least cut. With the
 * marks of a story rod, each rounded by itself from the foot up.
 *
 * @example
 * ```ts
 * const wall = coursing({
 *   height: "8 ft 4 in", unitHeights: ["3-5/8 in"], bedJoint: { least: "1/4 in", wanted: "3/8 in", most: "1/2 in" },
 *   datum: "bed to bed", bedJointLies: "over the unit", tape: "1/16 in",
 * });
 * wall.courses.toString(); // "25"
 * wall.bedJoint.toString(); // "0.375 in"
 * wall.storyRod[12].foot.reads; // "4 ft"
 * wall.storyRod[24].top.reads; // "8 ft 3-5/8 in"
 * ```
 */
export const coursing = /* @__PURE__ */ composed({
  id: "layout.coursing",
  title: "Coursing of a height",
  reads: /* @__PURE__ */ nested(coursingInput),
  run: layCourses,
});

function layCourses(given: ReadCoursing, work: Work): Coursing {
  const { height, unitHeights, bedJoint, datum, bedJointLies, leastCut, tape } = given;
  checkJointRange(bedJoint, "bedJoint", work);
  if (datum === "bed to bed" && bedJointLies === undefined) work.problem({ code: "missing", path: ["bedJointLies"], given: "", wanted: say("sayWhereBedJointLies") });
  if (datum !== "bed to bed" && bedJointLies !== undefined) work.problem({ code: "refused", path: ["bedJointLies"], given: bedJointLies, wanted: say("datumTells", { datum }) });
  if (unitHeights.length === 0 || unitHeights.length > 100) work.refuse(refusal(["unitHeights"], common("counted", { count: unitHeights.length, of: "heights" }), common("heightsOfUnits")));
  const closed = closeRun({ run: height, ends: datum, joint: bedJoint, sizes: unitHeights, leastCut, waysToCut: [1, 2], called: "courses", path: ["height"] }, work);
  const { joint, whole, cuts, cut, closing } = closed;
  work.stand(markRounding);
  if (cuts > 0) work.caution("Cut stone wet or with dust drawn off at the blade: its dust harms the lungs.");
  return {
    courses: quantity("count", whole + cuts),
    wholeCourses: quantity("count", whole),
    cutCourses: quantity("count", cuts),
    ...(cut === undefined ? {} : { cutHeight: cut }),
    bedJoint: joint,
    perJoint: subtract(joint, bedJoint.wanted),
    closing,
    storyRod: rodCourses(courseSizes(closed, unitHeights), joint, datum === "opening" || bedJointLies === "under the unit", tape),
  };
}

/** The face height of each course as it is set. */
function courseSizes({ whole, cuts, cut }: ClosedRun, unitHeights: readonly Quantity<"length">[]): readonly { readonly unitHeight: Quantity<"length">; readonly cut: boolean }[] {
  return Array.from({ length: whole + cuts }, (_, place) => {
    const isCut = (cuts > 0 && place === whole + cuts - 1) || (cuts === 2 && place === 0);
    return { unitHeight: isCut && cut !== undefined ? cut : sizeAt(unitHeights, place), cut: isCut };
  });
}
