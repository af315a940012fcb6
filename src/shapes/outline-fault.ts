import { type Amount, sign } from "../core/amount.js";
import { amountArithmetic as arithmetic } from "../core/open-amount.js";
import { amountOf, type Quantity } from "../core/quantity.js";
import type { Words } from "../core/wording.js";
import { say } from "./refusals.js";

/** A corner of a polygon: how far right and how high. */
export interface Point {
  readonly x: Quantity<"length">;
  readonly y: Quantity<"length">;
}

interface Place {
  readonly x: Amount;
  readonly y: Amount;
}

/**
 * What keeps points from being the outline of a wall; nothing where they are one.
 *
 * @param points - the corners in order, the last joined to the first
 * @returns what is wrong, corners counted from 1
 */
export function outlineFault(points: readonly Point[]): Words | undefined {
  const places = points.map(({ x, y }): Place => ({ x: amountOf(x), y: amountOf(y) }));
  const at = (index: number): Place => places[index % places.length] as Place;
  const ends = (index: number): { from: number; to: number } => ({ from: (index % places.length) + 1, to: ((index + 1) % places.length) + 1 });
  if (places.every((place) => turn(at(0), at(1), place) === 0)) return say("cornersOnOneLine");
  for (const index of places.keys()) {
    if (same(at(index), at(index + 1))) return say("edgeWithoutLength", ends(index));
  }
  for (const first of places.keys()) {
    if (foldsBack(at(first), at(first + 1), at(first + 2))) return say("edgeFoldsBack", ends(first + 1));
    for (let second = first + 2; second < places.length; second += 1) {
      const neighbours = first === 0 && second === places.length - 1;
      if (!neighbours && meet(at(first), at(first + 1), at(second), at(second + 1))) {
        const { from: otherFrom, to: otherTo } = ends(second);
        return say("edgesMeet", { ...ends(first), otherFrom, otherTo });
      }
    }
  }
  return undefined;
}

function same(a: Place, b: Place): boolean {
  return arithmetic.compare(a.x, b.x) === 0 && arithmetic.compare(a.y, b.y) === 0;
}

/** Which way one turns at b on the way from a to c: 1 left, -1 right, 0 straight on or back. */
function turn(a: Place, b: Place, c: Place): number {
  const { multiply, subtract } = arithmetic;
  const up = multiply(subtract(b.x, a.x), subtract(c.y, a.y));
  const down = multiply(subtract(b.y, a.y), subtract(c.x, a.x));
  return sign(subtract(up, down));
}

function foldsBack(a: Place, b: Place, c: Place): boolean {
  return turn(a, b, c) === 0 && !within(b, a, c);
}

/** Whether a place on the line through two others lies between them or on one of them. */
function within(place: Place, from: Place, to: Place): boolean {
  return between(place.x, from.x, to.x) && between(place.y, from.y, to.y);
}

function between(value: Amount, from: Amount, to: Amount): boolean {
  return arithmetic.compare(value, from) * arithmetic.compare(value, to) <= 0;
}

/** Whether two edges cross or touch. */
function meet(a: Place, b: Place, c: Place, d: Place): boolean {
  const [toC, toD, toA, toB] = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)];
  if (toC * toD < 0 && toA * toB < 0) return true;
  return (toC === 0 && within(c, a, b)) || (toD === 0 && within(d, a, b)) || (toA === 0 && within(a, c, d)) || (toB === 0 && within(b, c, d));
}
