import type { Fraction } from "../core/fraction.js";
import { nought } from "../shapes/exact-length.js";
import { type Box, type Face, max, min } from "../shapes/face.js";

/** How boards are laid, in exact lengths. */
export interface Pattern {
  /** Whether the long side lies level; else it stands upright. */
  readonly flat: boolean;
  readonly length: Fraction;
  readonly width: Fraction;
  /** How far every other course is shifted along itself. */
  readonly stagger: Fraction;
  /** Where the first whole board begins, from the left end and the foot of the wall. */
  readonly across: Fraction;
  readonly up: Fraction;
}

/** One line of boards end to end: a level course of boards laid flat, an upright one of boards that stand. */
export interface Course {
  /** Its long edges: heights where boards lie flat, distances from the left where they stand. */
  readonly from: Fraction;
  readonly to: Fraction;
  /** The ends of its boards, from before the wall begins to after it ends. */
  readonly ends: readonly Fraction[];
}

/** Where one board lies: the part within the box round the wall. */
export interface Place {
  readonly box: Box;
  /** The whole board, of which some may lie beyond. */
  readonly board: Box;
}

/** The courses of a wall, from the foot or from the left. */
export function coursesOf(face: Face, pattern: Pattern): readonly Course[] {
  const { flat, length, width, stagger, across, up } = pattern;
  const [side, run] = flat ? [face.height, face.width] : [face.width, face.height];
  const [aside, along] = flat ? [up, across] : [across, up];
  const edges = stepsOver(aside, width, side);
  return edges.slice(0, -1).map((from, index) => ({ from, to: from.add(width), ends: stepsOver(index % 2 === 0 ? along : along.add(stagger), length, run) }));
}

/** Every place that a step of this size reaches, one of them at `at`, from the last not after nought to the first not before the end. */
function stepsOver(at: Fraction, step: Fraction, end: Fraction): readonly Fraction[] {
  const places = [at.sub(at.div(step).ceil().mul(step))];
  while ((places.at(-1) as Fraction).compare(end) < 0) places.push((places.at(-1) as Fraction).add(step));
  return places;
}

/** The place of every board, course by course. */
export function placesOf(face: Face, courses: readonly Course[], { flat }: Pattern): readonly Place[] {
  return courses.flatMap(({ from, to, ends }) =>
    ends.slice(0, -1).map((start, index): Place => {
      const end = ends[index + 1] ?? start;
      const board = flat ? { left: start, bottom: from, right: end, top: to } : { left: from, bottom: start, right: to, top: end };
      const box = { left: max(board.left, nought), bottom: max(board.bottom, nought), right: min(board.right, face.width), top: min(board.top, face.height) };
      return { box, board };
    }),
  );
}
