import type { Fraction } from "../core/fraction.js";
import { areaWithin, type Box, boxRound, cornersWithin, type Point, type Rake, shared } from "../shapes/face.js";
import { covered, leftOf, tilingOf } from "./tiles.js";

/** A piece of board that hangs together, as it lies on the wall. */
export interface Piece {
  /** The box round it. */
  readonly box: Box;
  /** Its outline, anticlockwise, before openings are cut out: the box, less what lies beyond a raking edge. */
  readonly corners: readonly Point[];
  /** Boxes that are cut out of it. */
  readonly cutouts: readonly Box[];
  /** The boxes it is made up of, before raking edges are cut. */
  readonly tiles: readonly Box[];
  readonly area: Fraction;
}

/** A box with what the raking edges leave of it. */
interface Tile {
  readonly column: number;
  readonly row: number;
  readonly box: Box;
  readonly corners: readonly Point[];
}

/** The pieces that openings and raking edges leave of the place of one board. */
export function piecesOf(place: Box, openings: readonly Box[], rakes: readonly Rake[]): readonly Piece[] {
  const reached = openings.filter((opening) => shared(place, opening) !== undefined);
  const waiting = tilesOf(place, reached, rakes);
  const pieces: Piece[] = [];
  for (let first = waiting.pop(); first !== undefined; first = waiting.pop()) {
    const together = [first];
    for (const tile of together) {
      for (let index = waiting.length - 1; index >= 0; index -= 1) {
        if (join(tile, waiting[index] as Tile)) together.push(...waiting.splice(index, 1));
      }
    }
    pieces.push(pieceOf(together, rakes));
  }
  return pieces.sort((a, b) => a.box.bottom.compare(b.box.bottom) || a.box.left.compare(b.box.left));
}

function tilesOf(place: Box, openings: readonly Box[], rakes: readonly Rake[]): Tile[] {
  const { columns, rows, tile } = tilingOf(place, openings);
  const tiles: Tile[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const box = tile(column, row);
      const corners = covered(box, openings) ? [] : cornersWithin(box, rakes);
      if (corners.length > 0) tiles.push({ column, row, box, corners });
    }
  }
  return tiles;
}

/**
 * Whether two tiles lie side by side, or one over the other. They have board between them then, and more than a point of it:
 * what a wall without inner corners leaves of the two together is convex, and has area on either side.
 */
function join(one: Tile, other: Tile): boolean {
  return Math.abs(one.column - other.column) + Math.abs(one.row - other.row) === 1;
}

function pieceOf(tiles: readonly Tile[], rakes: readonly Rake[]): Piece {
  const box = boxRound(tiles.flatMap(({ corners }) => corners));
  const boxes = tiles.map((tile) => tile.box);
  const cutouts = leftOf(box, boxes).filter((cutout) => cornersWithin(cutout, rakes).length > 0);
  const area = tiles.map(({ corners }) => areaWithin(corners)).reduce((total, one) => total.add(one));
  return { box, corners: cornersWithin(box, rakes), cutouts, tiles: boxes, area };
}
