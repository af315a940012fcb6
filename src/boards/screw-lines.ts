import { exact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import { cutToRakes, joined, type StraightLine } from "./joint-lines.js";
import { type Box, inOrder, max, min, type Rake } from "../shapes/face.js";
import type { Piece } from "./pieces.js";
import type { Studs } from "./studs.js";

/** The lines on which a piece is screwed: every stud behind it, and its upright edges where they are backed. */
export function screwLinesOf(piece: Piece, studs: Studs, edgesBacked: boolean, rakes: readonly Rake[]): readonly StraightLine[] {
  const { left, right } = piece.box;
  const behind = studs.lines.map(({ at }) => at).filter((at) => at.compare(left) >= 0 && at.compare(right) <= 0);
  return inOrder(edgesBacked ? [left, ...behind, right] : behind).flatMap((at) => linesAt(piece.tiles, at, rakes));
}

/** The stretches of an upright line on which some tiles lie. */
function linesAt(tiles: readonly Box[], at: Fraction, rakes: readonly Rake[]): readonly StraightLine[] {
  const touched = tiles.filter(({ left, right }) => left.compare(at) <= 0 && right.compare(at) >= 0);
  const lines = touched.map(({ bottom, top }) => cutToRakes({ upright: true, at, from: bottom, to: top }, rakes));
  return joined(lines.filter(({ from, to }) => from.compare(to) < 0));
}

/** Screws over each other, from one height on. */
export interface ScrewRun {
  readonly across: Fraction;
  readonly bottom: Fraction;
  readonly screws: number;
}

/** The screws of a line in runs: they stand on the line, but the edge distance in where board lies on one side only, as beside an opening. */
export function screwRuns(piece: Piece, { at, from }: StraightLine, edgeDistance: Fraction, spacing: Fraction, screws: number): readonly ScrewRun[] {
  const runs: { across: Fraction; bottom: Fraction; screws: number }[] = [];
  for (let index = 0; index < screws; index += 1) {
    const bottom = from.add(edgeDistance).add(spacing.mul(exact(BigInt(index))));
    const across = screwAcross(piece, at, bottom, edgeDistance);
    const last = runs.at(-1);
    if (last?.across.equals(across) === true) last.screws += 1;
    else runs.push({ across, bottom, screws: 1 });
  }
  return runs;
}

/** Where a screw stands; at the height of a sill or a head there is board on both sides only where there is above and below. */
function screwAcross({ tiles }: Piece, at: Fraction, up: Fraction, edgeDistance: Fraction): Fraction {
  const beside = tiles.filter(({ bottom, top }) => bottom.compare(up) <= 0 && top.compare(up) >= 0);
  const everywhere = (side: (box: Box) => boolean): boolean => beside.every((one) => beside.some((other) => side(other) && max(one.bottom, other.bottom).compare(min(one.top, other.top)) < 0));
  if (!everywhere(({ left, right }) => left.compare(at) <= 0 && right.compare(at) > 0)) return at.sub(edgeDistance);
  return everywhere(({ left, right }) => left.compare(at) < 0 && right.compare(at) >= 0) ? at : at.add(edgeDistance);
}
