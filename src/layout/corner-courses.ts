import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, times } from "../core/quantity-arithmetic.js";
import { type BondCourse, type BondPiece, courseOf, fieldEnds } from "./bond-course.js";
import type { CourseEnd, ReadBond } from "./bond-input.js";
import { type ClosedRun, closeRun } from "./close-run.js";
import { say } from "./refusals.js";

type Length = Quantity<"length">;
type Piece = Pick<BondPiece, "is" | "length">;

/** Two courses between ends of which one at least has corner units, from the corners inward. */
export function cornerCourses(given: ReadBond, work: Work): readonly [BondCourse, BondCourse] {
  refuseStub(given, work);
  return [cornerCourse(given, 0, work), cornerCourse(given, 1, work)];
}

/** A wall between two corners that is too short for the legs of both. */
function refuseStub({ length, left, right }: ReadBond, work: Work): void {
  if (left.kind !== "corner" || right.kind !== "corner") return;
  const longest = compare(left.longLeg, right.longLeg) < 0 ? right.longLeg : left.longLeg;
  if (compare(length, times(longest, 2)) >= 0) return;
  work.refuse({ code: "refused", path: ["length"], given: length.toString(), wanted: say("stubUnderLegs", { leg: longest }) });
}

/** The leg that lies on this face in a course; nothing where the end has no corner. */
function legOf(end: CourseEnd, course: 0 | 1): Length | undefined {
  if (end.kind !== "corner") return undefined;
  return (end.firstCourse === "long leg") === (course === 0) ? end.longLeg : end.shortLeg;
}

function cornerCourse(given: ReadBond, course: 0 | 1, work: Work): BondCourse {
  const { length, unitLength, headJoint, left, right, leastCut } = given;
  const legs = [legOf(left, course), legOf(right, course)] as const;
  const field = legs.reduce<Length>((rest, leg) => (leg === undefined ? rest : subtract(rest, leg)), length);
  const piece = (leg: Length | undefined): readonly Piece[] => (leg === undefined ? [] : [{ is: "corner leg", length: leg }]);
  const around = (pieces: readonly Piece[], joint: Length): BondCourse => courseOf([...piece(legs[0]), ...pieces, ...piece(legs[1])], joint, left);
  // The two legs meet, with a joint between them.
  if (!legs.includes(undefined) && compare(field, headJoint.least) >= 0 && compare(field, headJoint.most) <= 0) return around([], field);
  if (compare(field, times(field, 0)) <= 0) return work.refuse({ code: "refused", path: ["length"], given: length.toString(), wanted: say("cornersLeaveNoRoom", { course: course + 1 }) });
  const closed = closeRun({ run: field, ends: fieldEnds(left, right), joint: headJoint, sizes: [unitLength], leastCut, waysToCut: [1, 2], called: "units", path: ["length"] }, work);
  return around(flatsOf(closed, unitLength, left, right), closed.joint);
}

/** The flat units, cut ones away from the corners: at the end without one, or midway between two. */
function flatsOf({ whole, cuts, cut }: ClosedRun, unitLength: Length, left: CourseEnd, right: CourseEnd): readonly Piece[] {
  const flats = Array.from({ length: whole }, (): Piece => ({ is: "whole", length: unitLength }));
  const cutOnes = cut === undefined ? [] : Array.from({ length: cuts }, (): Piece => ({ is: "cut", length: cut }));
  const place = left.kind !== "corner" ? 0 : right.kind !== "corner" ? whole : Math.floor(whole / 2);
  return [...flats.slice(0, place), ...cutOnes, ...flats.slice(place)];
}
