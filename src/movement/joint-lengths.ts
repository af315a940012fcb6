import { type Box, type Face, inOrder, max, min } from "../shapes/face.js";
import { nought } from "../shapes/exact-length.js";
import type { Fraction } from "../core/fraction.js";

/** A stretch from one end to the other. */
interface Stretch {
  readonly from: Fraction;
  readonly to: Fraction;
}

/** An opening as a joint meets it: the box round it, and the box in which there is no wall at all; an arch or a circle is not taken out. */
export interface MetOpening {
  readonly box: Box;
  readonly clear: Box | undefined;
}

/** Which way a joint runs: its place is measured along one way, its length along the other. */
export type Way = "upright" | "level";

/** Length of a joint on the wall, openings out. */
export function jointLength(way: Way, at: Fraction, { width, height, rakes }: Face, openings: readonly MetOpening[]): Fraction {
  let wall: Stretch = { from: nought, to: way === "upright" ? height : width };
  for (const { a, b, c } of rakes) {
    const [across, along] = way === "upright" ? [a, b] : [b, a];
    const edge = c.sub(across.mul(at)).div(along);
    wall = along.compare(nought) > 0 ? { from: wall.from, to: min(wall.to, edge) } : { from: max(wall.from, edge), to: wall.to };
  }
  if (wall.from.compare(wall.to) >= 0) return nought;
  const gaps = openings.flatMap(({ clear }): Stretch[] => {
    if (clear === undefined) return [];
    const { left, right, bottom, top } = clear;
    const [low, high, from, to] = way === "upright" ? [left, right, bottom, top] : [bottom, top, left, right];
    return low.compare(at) <= 0 && at.compare(high) <= 0 ? [{ from: max(from, wall.from), to: min(to, wall.to) }] : [];
  });
  const ends = inOrder([wall.from, wall.to, ...gaps.flatMap(({ from, to }) => [from, to])]);
  return ends.slice(1).reduce((total, to, index) => {
    const from = ends[index] ?? to;
    const open = gaps.some((gap) => gap.from.compare(from) <= 0 && gap.to.compare(to) >= 0);
    return open ? total : total.add(to.sub(from));
  }, nought);
}

/** Whether a joint runs through an opening, and not along its edge. */
export function runsThrough(way: Way, at: Fraction, openings: readonly MetOpening[]): boolean {
  return openings.some(({ box: { left, right, bottom, top } }) => {
    const [low, high] = way === "upright" ? [left, right] : [bottom, top];
    return low.compare(at) < 0 && at.compare(high) < 0;
  });
}
