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

/** Where the screws of a line stand: on the line, or the edge distance in where board lies on one side only. */
export function screwsAcross(piece: Piece, { at, from, to }: StraightLine, edgeDistance: Fraction): Fraction {
  const onLeft = (box: Box): boolean => box.left.compare(at) < 0 && box.right.compare(at) >= 0;
  const onRight = (box: Box): boolean => box.left.compare(at) <= 0 && box.right.compare(at) > 0;
  const beside = piece.tiles.filter(({ bottom, top }) => max(bottom, from).compare(min(top, to)) < 0);
  if (!beside.some(onRight)) return at.sub(edgeDistance);
  return beside.some(onLeft) ? at : at.add(edgeDistance);
}
