import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import type { CourseEnd } from "./bond-input.js";
import type { Ends } from "./close-run.js";

type Length = Quantity<"length">;

/** A piece of a course. */
export interface BondPiece {
  readonly is: "corner leg" | "whole" | "cut";
  /** From the left end of the course to the piece. */
  readonly left: Length;
  readonly length: Length;
}

/** A course of a bond pattern, from left to right. */
export interface BondCourse {
  readonly headJoint: Length;
  readonly wholeUnits: number;
  readonly cutUnits: number;
  /** The least length of a cut unit, where any is cut. */
  readonly leastCutLength?: Length;
  readonly pieces: readonly BondPiece[];
}

/** Where the field of flat units begins and ends: beside a corner unit it has a joint. */
export function fieldEnds(left: CourseEnd, right: CourseEnd): Ends {
  const joints = [left, right].filter(({ kind }) => kind !== "plain").length;
  return joints === 0 ? "unit to unit" : joints === 1 ? "bed to bed" : "opening";
}

/** Sets pieces one after another with the joint between them. */
export function courseOf(pieces: readonly Pick<BondPiece, "is" | "length">[], headJoint: Length, left: CourseEnd): BondCourse {
  const placed: BondPiece[] = [];
  const nought = subtract(headJoint, headJoint);
  let at = left.kind === "joint" ? headJoint : nought;
  for (const piece of pieces) {
    placed.push({ ...piece, left: at });
    at = sum([piece.length, at, headJoint]);
  }
  const cuts = placed.filter(({ is }) => is === "cut").map(({ length }) => length);
  const [least] = [...cuts].sort(compare);
  return {
    headJoint,
    wholeUnits: placed.filter(({ is }) => is === "whole").length,
    cutUnits: cuts.length,
    ...(least === undefined ? {} : { leastCutLength: least }),
    pieces: placed,
  };
}

/** A piece by its length: a whole unit, or a cut one. */
export function pieceOf(length: Length, unitLength: Length): Pick<BondPiece, "is" | "length"> {
  return { is: compare(length, unitLength) === 0 ? "whole" : "cut", length };
}

/** The least distance between a head joint of one course and one of the next; nothing where a course has none. */
export function lapOf(one: BondCourse, other: BondCourse): Length | undefined {
  const [ours, theirs] = [headJoints(one), headJoints(other)];
  let least: Length | undefined;
  let [i, j] = [0, 0];
  for (;;) {
    const [a, b] = [ours[i], theirs[j]];
    if (a === undefined || b === undefined) return least;
    const order = compare(a, b);
    const apart = order < 0 ? subtract(b, a) : subtract(a, b);
    if (least === undefined || compare(apart, least) < 0) least = apart;
    if (order < 0) i += 1;
    else j += 1;
  }
}

/** Left edges of the head joints between the pieces. */
function headJoints({ pieces }: BondCourse): readonly Length[] {
  return pieces.slice(0, -1).map(({ left, length }) => sum([length, left]));
}
