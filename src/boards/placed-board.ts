import type { Quantity } from "../core/quantity.js";
import type { Shown } from "../shapes/exact-length.js";
import { type Box, heightOf, type Point, widthOf } from "../shapes/face.js";
import type { StraightLine } from "./joint-lines.js";
import type { PieceScrews, ScrewLine } from "./layout-screws.js";
import type { Piece } from "./pieces.js";
import type { Offcut, SawnPiece } from "./sawing.js";
import type { StudAt, Studs } from "./studs.js";

type Length = Quantity<"length">;

/** A point on the wall, from its left end and its foot. */
export interface WallPoint {
  readonly across: Length;
  readonly up: Length;
}

/** An upright rectangle on the wall, from its left end and its foot. */
export interface WallBox {
  readonly left: Length;
  readonly bottom: Length;
  readonly width: Length;
  readonly height: Length;
}

/** A board, or a piece of one, in its place. `left` to `height` are the box round it. */
export interface PlacedBoard extends WallBox {
  /** Counted from 1 in the order of placing. */
  readonly number: number;
  readonly kind: "whole" | "cut";
  /** The board it comes from, counted from 1; pieces with the same number come from one board. */
  readonly board: number;
  /** Whether it is cut from what another place left over. */
  readonly fromOffcut: boolean;
  /** Where the box round it lies on the board it comes from, from the lower left corner of that board. */
  readonly onBoard: WallPoint;
  /** Its face, with what openings and raking edges take off. */
  readonly area: Quantity<"area">;
  /** Whether its left edge lies on a stud. */
  readonly leftOnStud: boolean;
  /** Whether its right edge lies on a stud. */
  readonly rightOnStud: boolean;
  /** Its outline before openings are cut out, anticlockwise: the box, less what lies beyond a raking edge. */
  readonly corners: readonly WallPoint[];
  /** What openings take off the outline. */
  readonly cutouts: readonly WallBox[];
  /** Its screws, where they were asked for. */
  readonly screws?: number;
  readonly screwLines?: readonly ScrewLine[];
}

/** A joint between boards, from `left` and `bottom` to the right or upward. */
export interface BoardJoint {
  readonly runs: "level" | "upright";
  readonly left: Length;
  readonly bottom: Length;
  readonly length: Length;
  /** Whether an upright joint lies on a stud. */
  readonly onStud?: boolean;
}

/** A stud on its centre line, and what it stands for. */
export interface LayoutStud {
  readonly across: Length;
  readonly stands: StudAt;
}

/** What is left of a board in the end; `left` and `bottom` are measured on that board. */
export interface BoardOffcut extends WallBox {
  /** The board it comes from. */
  readonly board: number;
}

/** A box as it is answered. */
export function wallBox(box: Box, show: Shown): WallBox {
  return { left: show.length(box.left), bottom: show.length(box.bottom), width: show.length(widthOf(box)), height: show.length(heightOf(box)) };
}

/** A point as it is answered. */
export function wallPoint({ across, up }: Point, show: Shown): WallPoint {
  return { across: show.length(across), up: show.length(up) };
}

/** A piece as it is answered. */
export function placedBoard({ piece, board, at, whole, fromOffcut }: SawnPiece, index: number, studs: Studs, show: Shown, screws: PieceScrews | undefined): PlacedBoard {
  const { box, area, corners, cutouts } = piece;
  const [leftOnStud, rightOnStud] = [box.left, box.right].map((at) => studs.standAt(at) || isPoint(piece, at)) as [boolean, boolean];
  return {
    number: index + 1,
    kind: whole ? "whole" : "cut",
    ...wallBox(box, show),
    board,
    fromOffcut,
    onBoard: wallPoint(at, show),
    area: show.area(area),
    leftOnStud,
    rightOnStud,
    corners: corners.map((corner) => wallPoint(corner, show)),
    cutouts: cutouts.map((cutout) => wallBox(cutout, show)),
    ...(screws === undefined ? {} : { screws: screws.lines.reduce((total, line) => total + line.screws, 0), screwLines: screws.lines }),
  };
}

/** Whether a raking edge brings a piece to a point at this side, so that it has no upright edge there. */
function isPoint({ corners }: Piece, at: Piece["box"]["left"]): boolean {
  return corners.filter(({ across }) => across.equals(at)).length === 1;
}

/** A joint as it is answered. */
export function boardJoint({ upright, at, from, to }: StraightLine, studs: Studs, show: Shown): BoardJoint {
  const length = show.length(to.sub(from));
  return upright
    ? { runs: "upright", left: show.length(at), bottom: show.length(from), length, onStud: studs.standAt(at) }
    : { runs: "level", left: show.length(from), bottom: show.length(at), length };
}

/** A leftover as it is answered. */
export function boardOffcut({ board, box }: Offcut, show: Shown): BoardOffcut {
  return { board, ...wallBox(box, show) };
}
