import { exact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { nought } from "./exact-length.js";

/** A point on a wall, from its left end and its foot. */
export interface Point {
  readonly across: Fraction;
  readonly up: Fraction;
}

/** An upright rectangle on a wall. */
export interface Box {
  readonly left: Fraction;
  readonly bottom: Fraction;
  readonly right: Fraction;
  readonly top: Fraction;
}

/** A raking edge: the wall lies where `a * across + b * up` is at most `c`; neither `a` nor `b` is nought. */
export interface Rake {
  readonly a: Fraction;
  readonly b: Fraction;
  readonly c: Fraction;
}

/** A wall without bays or steps: the box round it, less what lies beyond its raking edges. */
export interface Face {
  readonly width: Fraction;
  readonly height: Fraction;
  readonly rakes: readonly Rake[];
}

/** The lesser of two. */
export const min = (a: Fraction, b: Fraction): Fraction => (a.compare(b) <= 0 ? a : b);
/** The greater of two. */
export const max = (a: Fraction, b: Fraction): Fraction => (a.compare(b) >= 0 ? a : b);

/** The number as text, the same for equal numbers. */
export const keyOf = String as (number: Fraction) => string;

/** The numbers in order, each once. */
export function inOrder(numbers: readonly Fraction[]): readonly Fraction[] {
  return [...numbers].sort((a, b) => a.compare(b)).filter((one, index, all) => index === 0 || all[index - 1]?.equals(one) !== true);
}

/** The part that two boxes share; nothing where they only touch. */
export function shared(one: Box, other: Box): Box | undefined {
  const box = { left: max(one.left, other.left), bottom: max(one.bottom, other.bottom), right: min(one.right, other.right), top: min(one.top, other.top) };
  return box.left.compare(box.right) < 0 && box.bottom.compare(box.top) < 0 ? box : undefined;
}

/** From the left edge of a box to its right one. */
export const widthOf = ({ left, right }: Box): Fraction => right.sub(left);
/** From the bottom of a box to its top. */
export const heightOf = ({ bottom, top }: Box): Fraction => top.sub(bottom);

/** The corners of a box, anticlockwise. */
export function cornersOf({ left, bottom, right, top }: Box): readonly Point[] {
  return [{ across: left, up: bottom }, { across: right, up: bottom }, { across: right, up: top }, { across: left, up: top }];
}

/** What a rake leaves over at a point: below nought beyond the edge. */
export function spare({ a, b, c }: Rake, { across, up }: Point): Fraction {
  return c.sub(a.mul(across)).sub(b.mul(up));
}

/** The corners of the part of a box that lies within the rakes, anticlockwise; none where there is no such part. */
export function cornersWithin(box: Box, rakes: readonly Rake[]): readonly Point[] {
  if (rakes.length === 0) return cornersOf(box);
  const corners = rakes.reduce((left, rake) => cutAlong(left, rake), cornersOf(box));
  return corners.length > 2 && areaWithin(corners).compare(nought) > 0 ? corners : [];
}

function cutAlong(corners: readonly Point[], rake: Rake): readonly Point[] {
  const spares = corners.map((corner) => spare(rake, corner));
  if (spares.every((one) => one.compare(nought) >= 0)) return corners;
  return corners.flatMap((corner, index): Point[] => {
    const next = corners[(index + 1) % corners.length] ?? corner;
    const [here, there] = [spares[index] ?? nought, spares[(index + 1) % corners.length] ?? nought];
    const on = here.compare(nought) >= 0 ? [corner] : [];
    return here.mul(there).compare(nought) < 0 ? [...on, between(corner, next, here.div(here.sub(there)))] : on;
  });
}

function between(from: Point, to: Point, share: Fraction): Point {
  return { across: from.across.add(to.across.sub(from.across).mul(share)), up: from.up.add(to.up.sub(from.up).mul(share)) };
}

/** Area within corners that go round anticlockwise. */
export function areaWithin(corners: readonly Point[]): Fraction {
  const twice = corners.reduce((total, { across, up }, index) => {
    const next = corners[(index + 1) % corners.length] ?? { across, up };
    return total.add(across.mul(next.up)).sub(next.across.mul(up));
  }, nought);
  return twice.div(exact(2n));
}

/** The box round some corners. */
export function boxRound(corners: readonly Point[]): Box {
  const across = inOrder(corners.map((corner) => corner.across));
  const up = inOrder(corners.map((corner) => corner.up));
  return { left: across[0] ?? nought, bottom: up[0] ?? nought, right: across.at(-1) ?? nought, top: up.at(-1) ?? nought };
}
