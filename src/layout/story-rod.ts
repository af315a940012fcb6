import type { Quantity } from "../core/quantity.js";
import { subtract, sum } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { writeQuantity } from "../core/write-quantity.js";
import { runOfUnits } from "./run-of-units.js";
import { tapeMark } from "./tape-mark.js";

type Length = Quantity<"length">;

/** The smallest divisions of the tapes that marks are rounded to. */
export const tapes = ["1/16 in", "1/32 in", "1 mm"] as const;

/** A tape by its smallest division. */
export type Tape = (typeof tapes)[number];

/** A mark on a story rod. */
export interface RodMark {
  /** The height above the foot of the rod, exact. */
  readonly height: Length;
  /** The same, rounded to the tape. */
  readonly mark: Length;
  /** The mark as the tape reads it: `"5 ft 4-5/16 in"`, `"1625 mm"`. */
  readonly reads: string;
}

/** A course on a story rod, from the foot up. */
export interface RodCourse {
  /** Its number, from 1. */
  readonly course: number;
  /** The face height of its units as they are set. */
  readonly unitHeight: Length;
  readonly cut: boolean;
  /** Foot of its units: top of the joint below. */
  readonly foot: RodMark;
  /** Top of its units. */
  readonly top: RodMark;
}

/** The height rounded by itself to the tape, and as the tape reads it. */
export function rodMark(height: Length, tape: Tape): RodMark {
  const { mark } = tapeMark({ height, division: quantity("length", tape) });
  const reads = tape === "1 mm" ? writeQuantity(mark, { unit: "mm", places: 0 }).text : writeQuantity(mark, { as: "feetInches", tapeParts: tape === "1/16 in" ? 16 : 32 }).text;
  return { height, mark, reads };
}

/**
 * The courses of a story rod.
 *
 * @param sizes - the face height of each course as it is set
 * @param joint - the bed joint
 * @param firstJoint - whether a joint lies below the first course
 */
export function rodCourses(sizes: readonly { readonly unitHeight: Length; readonly cut: boolean }[], joint: Length, firstJoint: boolean, tape: Tape): readonly RodCourse[] {
  const courses: RodCourse[] = [];
  let unitsTotal: Length | undefined;
  for (const { unitHeight, cut } of sizes) {
    const number: number = courses.length + 1;
    unitsTotal = unitsTotal === undefined ? unitHeight : sum([unitsTotal, unitHeight]);
    const { bedToBed, unitToUnit } = runOfUnits({ unitsTotal, units: number, joint });
    const top = firstJoint ? bedToBed : unitToUnit;
    courses.push({ course: number, unitHeight, cut, foot: rodMark(subtract(top, unitHeight), tape), top: rodMark(top, tape) });
  }
  return courses;
}
