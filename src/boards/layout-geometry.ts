import { exact } from "../core/amount.js";
import { common } from "../core/common-refusals.js";
import type { Work } from "../core/composed.js";
import type { Fraction } from "../core/fraction.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import type { Words } from "../core/wording.js";
import type { ReadOpeningShape } from "../shapes/opening-shape.js";
import type { Pattern } from "./courses.js";
import { exactLength, nought } from "../shapes/exact-length.js";
import { type Box, cornersOf, type Face, shared, spare } from "../shapes/face.js";
import type { ReadLayout } from "./layout-input.js";
import { say } from "./refusals.js";
import { faceOf } from "../shapes/wall-face.js";

/** A job in exact lengths, found fit to be laid out. */
export interface LayoutGeometry {
  readonly face: Face;
  readonly openings: readonly Box[];
  readonly pattern: Pattern;
  readonly spacing: Fraction;
  readonly firstStud: Fraction;
}

/** Beyond these a layout is a slip of the pen, or takes too long. */
const mostBoards = 5000;
const mostStuds = 1000;
const mostOpenings = 100;

/** The job in exact lengths; everything that keeps it from being laid out is a problem. */
export function geometryOf(given: ReadLayout, work: Work): LayoutGeometry {
  refuseAll(layoutTroubles(given), work);
  const { face, openings, pattern } = exactly(given);
  if ("kind" in face) return work.refuse(refusal(["wall", "kind"], given.wall.kind, face));
  return { face, openings, pattern, spacing: exactLength(given.studs.spacing), firstStud: exactLength(given.studs.start) };
}

/** Everything that keeps a job from being laid out. */
export function layoutTroubles(given: ReadLayout): readonly Trouble[] {
  if (given.openings.length > mostOpenings) return [refusal(["openings"], common("counted", { count: given.openings.length, of: "openings" }), say("mostLaidOut", { most: mostOpenings, of: "openings" }))];
  const { face, openings, pattern } = exactly(given);
  const onWall = "kind" in face ? [refusal(["wall", "kind"], given.wall.kind, face)] : [...openingTroubles(openings, face), ...sizeTroubles(given, pattern, face)];
  return [...onWall, ...boardTroubles(given, pattern)];
}

function exactly({ wall, openings, board, orientation, stagger, start }: ReadLayout): { readonly face: Face | Words; readonly openings: readonly Box[]; readonly pattern: Pattern } {
  const [across, up] = start === undefined ? [nought, nought] : [exactLength(start.across), exactLength(start.up)];
  return {
    face: faceOf(wall),
    openings: openings.map(({ shape, left, bottom }) => openingBox(shape, exactLength(left), exactLength(bottom))),
    pattern: { flat: orientation === "flat", length: exactLength(board.length), width: exactLength(board.width), stagger: exactLength(stagger), across, up },
  };
}

function boardTroubles({ board, stagger, studs, start }: ReadLayout, { flat, length, width }: Pattern): Trouble[] {
  const [across, up] = flat ? [length, width] : [width, length];
  const rows: readonly (readonly [Trouble["path"], Quantity<"length"> | undefined, Fraction, Words])[] = [
    [["board", "width"], board.width, length, say("widthIsShortSide", { length: board.length })],
    [["stagger"], stagger, length, say("shiftLongerThanBoard")],
    [["studs", "start"], studs.start, exactLength(studs.spacing), say("firstStudTooFar")],
    [["start", "across"], start?.across, across, say("firstBoardTooFarAcross")],
    [["start", "up"], start?.up, up, say("firstBoardTooFarUp")],
  ];
  return rows.flatMap(([path, one, most, wanted]) => (one === undefined || exactLength(one).compare(most) <= 0 ? [] : [refusal(path, one.toString(), wanted)]));
}

function sizeTroubles({ board, studs }: ReadLayout, { flat, length, width }: Pattern, face: Face): Trouble[] {
  const larger = (flat ? length : width).compare(face.width) > 0 && (flat ? width : length).compare(face.height) > 0;
  const [along, aside] = flat ? [face.width.div(length), face.height.div(width)] : [face.height.div(length), face.width.div(width)];
  const boards = along.add(exact(1n)).mul(aside.add(exact(1n)));
  return [
    ...(larger ? [refusal(["board"], say("widthByLength", { width: board.width, length: board.length }), say("boardLargerThanWall"))] : []),
    ...(boards.compare(exact(BigInt(mostBoards))) > 0 ? [refusal(["board"], say("aboutBoards", { count: Number(boards.round().numerator) }), say("mostLaidOut", { most: mostBoards, of: "boards" }))] : []),
    ...(face.width.div(exactLength(studs.spacing)).compare(exact(BigInt(mostStuds))) > 0 ? [refusal(["studs", "spacing"], studs.spacing.toString(), say("mostLaidOut", { most: mostStuds, of: "studs" }))] : []),
  ];
}

function openingTroubles(openings: readonly Box[], face: Face): Trouble[] {
  return openings.flatMap((opening, index) => {
    const earlier = openings.slice(0, index).findIndex((one) => shared(one, opening) !== undefined);
    return [
      ...(insideFace(opening, face) ? [] : [refusal(["openings", index], "", say("openingBeyondWall"))]),
      ...(earlier < 0 ? [] : [refusal(["openings", index], "", say("openingOverlaps", { other: earlier }))]),
    ];
  });
}

function insideFace(box: Box, { width, height, rakes }: Face): boolean {
  return box.right.compare(width) <= 0 && box.top.compare(height) <= 0 && rakes.every((rake) => cornersOf(box).every((corner) => spare(rake, corner).compare(nought) >= 0));
}

function openingBox(shape: ReadOpeningShape, left: Fraction, bottom: Fraction): Box {
  const [width, height] = sizeOf(shape);
  return { left, bottom, right: left.add(width), top: bottom.add(height) };
}

function sizeOf(shape: ReadOpeningShape): readonly [Fraction, Fraction] {
  switch (shape.kind) {
    case "rectangle":
      return [exactLength(shape.width), exactLength(shape.height)];
    case "arched":
      return [exactLength(shape.width), exactLength(shape.height).add(exactLength(shape.rise))];
    case "round":
      return [exactLength(shape.diameter), exactLength(shape.diameter)];
  }
}
