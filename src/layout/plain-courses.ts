import type { Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum, times } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { usualLeastCut } from "../data/layout.js";
import { type BondCourse, courseOf, fieldEnds, pieceOf } from "./bond-course.js";
import type { ReadBond } from "./bond-input.js";
import { bondShift } from "./bond-shift.js";
import { apart, closeRun, jointBy, mostThatFit, type Run } from "./close-run.js";
import { halfUnit } from "./half-unit.js";
import { say } from "./refusals.js";

type Length = Quantity<"length">;

/** A course by its two end pieces; between them all units are whole. */
interface EndPieces {
  readonly first: Length;
  readonly last: Length;
  readonly between: number;
  readonly joint: Length;
}

/** Two courses without corner units: the first closes or is centred, the second is shifted against it. */
export function plainCourses(given: ReadBond, offset: Quantity<"ratio">, work: Work): readonly [BondCourse, BondCourse] {
  const { length, unitLength, headJoint, left, right, leastCut } = given;
  const run: Run = { run: length, ends: fieldEnds(left, right), joint: headJoint, sizes: [unitLength], leastCut, waysToCut: [2], called: "units", path: ["length"] };
  const first = (compare(offset, quantity("ratio", "1/2")) === 0 ? withHalf(run, unitLength, work) : undefined) ?? fromClosed(run, unitLength, work);
  const second = shifted(first, given, offset, work);
  return [laid(first, given), laid(second, given)];
}

function laid({ first, last, between, joint }: EndPieces, { unitLength, left }: ReadBond): BondCourse {
  const whole = Array.from({ length: between }, () => unitLength);
  return courseOf([first, ...whole, last].map((one) => pieceOf(one, unitLength)), joint, left);
}

/** Closed by whole units, or with the same cut at both ends. */
function fromClosed(run: Run, unitLength: Length, work: Work): EndPieces {
  const { whole, cuts, cut = unitLength, joint } = closeRun(run, work);
  if (whole + cuts < 2) return work.refuse({ code: "refused", path: run.path, given: run.run.toString(), wanted: say("twoUnitsOrMore") });
  return { first: cut, last: cut, between: whole + cuts - 2, joint };
}

/** Closed by whole units and a half one, where that comes nearer to the joint that is wanted than whole units do. */
function withHalf(run: Run, unitLength: Length, work: Work): EndPieces | undefined {
  const { least, wanted, most } = run.joint;
  const fit = mostThatFit(run, work);
  const half = halfUnit({ unit: unitLength, joint: quantity("length", "0 in") }).half;
  const tries = [0, 1, 2].flatMap((halves) => {
    const [whole, odd] = [fit + Math.floor(halves / 2), halves % 2 !== 0];
    if (whole < 1) return [];
    const unitsTotal = odd ? sum([times(unitLength, whole), half]) : times(unitLength, whole);
    const input = { run: run.run, unitsTotal, units: odd ? whole + 0.5 : whole };
    const joint = jointBy(run.ends, input);
    return joint === undefined || compare(joint, least) < 0 || compare(joint, most) > 0 ? [] : [{ whole, odd, input, joint }];
  });
  const [best] = tries.sort((one, other) => compare(apart(one.joint, wanted), apart(other.joint, wanted)));
  if (best?.odd !== true) return undefined;
  const joint = jointBy(run.ends, best.input, work) ?? best.joint;
  return { first: unitLength, last: work.part(halfUnit, { unit: unitLength, joint }).answers.half, between: best.whole - 1, joint };
}

/** The end pieces of the next course; its head joints are those of the first, shifted. */
function shifted(course: EndPieces, given: ReadBond, offset: Quantity<"ratio">, work: Work): EndPieces {
  const { first, last, between, joint } = course;
  const { unitLength, length } = given;
  const { shift, module } = work.part(bondShift, { unitLength, headJoint: joint, offset }).answers;
  const none = times(shift, 0);
  const leastCut = given.leastCut ?? halfUnit({ unit: unitLength, joint }).half;
  const fits = (piece: Length): boolean => compare(piece, leastCut) >= 0 && compare(piece, unitLength) <= 0;
  // Shifted to the left; to the right it is the same course seen from behind. An end piece that comes out too short or too long
  // gives or takes a module.
  const modules = [0, 1, -1];
  const ways = modules.flatMap((atFirst) =>
    modules.map((atLast): EndPieces => ({ first: sum([subtract(first, shift), times(module, atFirst)]), last: sum([last, shift, times(module, atLast)]), between: between - atFirst - atLast, joint })),
  );
  const found = ways.find((way) => fits(way.first) && fits(way.last) && way.between >= 0);
  if (found !== undefined) {
    if (given.leastCut === undefined && compare(shift, none) !== 0) tellLeastCut(work);
    return found;
  }
  const isPiece = (piece: Length): boolean => compare(piece, none) > 0 && compare(piece, unitLength) <= 0;
  // A module is longer than a unit, so that there is one such way at the most.
  const way = ways.find((one) => isPiece(one.first) && isPiece(one.last));
  const next = [way === undefined ? say("endPiecesDoNotComeOut") : say("longestShorterEnd", { length: compare(way.first, way.last) < 0 ? way.first : way.last })];
  return work.refuse({ code: "refused", path: ["length"], given: length.toString(), wanted: say("nextCourseUnderLeast", { first, last, next, leastCut }) });
}

function tellLeastCut(work: Work): void {
  work.assume(`leastCut: ${usualLeastCut.says}`);
  work.stand(usualLeastCut);
}
