import type { Fraction } from "../core/fraction.js";
import type { Place } from "./courses.js";
import { nought } from "../shapes/exact-length.js";
import { type Box, heightOf, max, type Point, widthOf } from "../shapes/face.js";
import type { Piece } from "./pieces.js";
import { leftOf } from "./tiles.js";

/** What is left of a board once pieces have been cut from it; the box is measured on that board. */
export interface Offcut {
  /** The board it comes from, counted from 1. */
  readonly board: number;
  readonly box: Box;
}

/** A piece with the board it is cut from. */
export interface SawnPiece {
  readonly piece: Piece;
  /** The board it comes from, counted from 1 in the order they are fetched. */
  readonly board: number;
  /** The lower left corner of the piece on that board. */
  readonly at: Point;
  readonly whole: boolean;
  /** Whether it is cut from what another place left over. */
  readonly fromOffcut: boolean;
}

/** What every piece is cut from. */
export interface Sawing {
  readonly pieces: readonly SawnPiece[];
  readonly boards: number;
  readonly offcuts: readonly Offcut[];
}

/**
 * Cuts the pieces from boards, in the order they are placed. Where offcuts are used again, each piece is first looked for
 * among the offcuts so far, and cut from the smallest it fits into; offcuts are not turned.
 */
export function sawingOf(places: readonly { readonly place: Place; readonly pieces: readonly Piece[] }[], reuse: boolean): Sawing {
  const pieces: SawnPiece[] = [];
  const offcuts: Offcut[] = [];
  let boards = 0;
  for (const { place, pieces: wanted } of places) {
    const fresh: Piece[] = [];
    for (const piece of wanted) {
      const offcut = reuse ? smallest(offcuts, piece.box) : undefined;
      if (offcut === undefined) {
        fresh.push(piece);
        continue;
      }
      const { board, box } = offcut;
      offcuts.splice(offcuts.indexOf(offcut), 1, ...cutAway(box, piece).map((left) => ({ board, box: left })));
      pieces.push({ piece, board, at: { across: box.left, up: box.bottom }, whole: false, fromOffcut: true });
    }
    if (fresh.length === 0) continue;
    boards += 1;
    const cut = cutFresh(place, fresh);
    for (const { piece, at } of cut.pieces) pieces.push({ piece, board: boards, at, whole: piece.area.equals(areaOf(place.board)), fromOffcut: false });
    for (const box of cut.left) offcuts.push({ board: boards, box });
  }
  return { pieces, boards, offcuts };
}

const areaOf = (box: Box): Fraction => widthOf(box).mul(heightOf(box));

/** The smallest offcut that a piece fits into. */
function smallest(offcuts: readonly Offcut[], wanted: Box): Offcut | undefined {
  const fits = offcuts.filter(({ box }) => widthOf(box).compare(widthOf(wanted)) >= 0 && heightOf(box).compare(heightOf(wanted)) >= 0);
  return fits.length === 0 ? undefined : fits.reduce((best, one) => (areaOf(one.box).compare(areaOf(best.box)) < 0 ? one : best));
}

/** Cuts a new board: one piece from its corner; several as they lie on the wall. */
function cutFresh({ board }: Place, pieces: readonly Piece[]): { readonly pieces: readonly { readonly piece: Piece; readonly at: Point }[]; readonly left: readonly Box[] } {
  const [only] = pieces;
  const ownBox = moved(board, board.left, board.bottom);
  if (only !== undefined && pieces.length === 1) return { pieces: [{ piece: only, at: { across: nought, up: nought } }], left: cutAway(ownBox, only) };
  const taken = pieces.flatMap(({ tiles }) => tiles.map((tile) => moved(tile, board.left, board.bottom)));
  return { pieces: pieces.map((piece) => ({ piece, at: { across: piece.box.left.sub(board.left), up: piece.box.bottom.sub(board.bottom) } })), left: leftOf(ownBox, taken) };
}

/** A box seen from a point to the left of it and below. */
function moved({ left, bottom, right, top }: Box, across: Fraction, up: Fraction): Box {
  return { left: left.sub(across), bottom: bottom.sub(up), right: right.sub(across), top: top.sub(up) };
}

/** What is left of a box where a piece is cut from its lower left corner, by straight cuts right through; the way that leaves the larger part. */
function cutAway(box: Box, piece: Piece): readonly Box[] {
  const [right, top] = [box.left.add(widthOf(piece.box)), box.bottom.add(heightOf(piece.box))];
  const beside = [{ ...box, left: right }, { ...box, right, bottom: top }];
  const above = [{ ...box, left: right, top }, { ...box, bottom: top }];
  const largest = (boxes: readonly Box[]): Fraction => boxes.map(areaOf).reduce(max);
  const split = largest(beside).compare(largest(above)) >= 0 ? beside : above;
  const cutouts = piece.cutouts.map((cutout) => moved(cutout, piece.box.left.sub(box.left), piece.box.bottom.sub(box.bottom)));
  return [...split, ...cutouts].filter((one) => areaOf(one).compare(nought) > 0);
}
