import { composed, type Work } from "../core/composed.js";
import type { Quantity } from "../core/quantity.js";
import { refusal } from "../core/refuse-all.js";
import { usualFirstBoard, usualStuds } from "../data/boards.js";
import { nested } from "../schema/nested.js";
import { boardCount } from "./board-count.js";
import { coursesOf, placesOf } from "./courses.js";
import { nought, type Shown, shownLike } from "../shapes/exact-length.js";
import { cornersWithin, heightOf, min, widthOf } from "../shapes/face.js";
import { jointLinesOf } from "./joint-lines.js";
import { type JointTally, jointTallyOf } from "./joint-tally.js";
import { geometryOf } from "./layout-geometry.js";
import { layoutInput, type ReadLayout } from "./layout-input.js";
import { screwCounter } from "./layout-screws.js";
import { piecesOf } from "./pieces.js";
import { boardJoint, boardOffcut, type BoardJoint, type BoardOffcut, type LayoutStud, placedBoard, type PlacedBoard, wallBox, type WallBox, wallPoint, type WallPoint } from "./placed-board.js";
import { say } from "./refusals.js";
import { sawingOf } from "./sawing.js";
import { screwLinesOf } from "./screw-lines.js";
import { studsOf } from "./studs.js";

/** Boards laid out on a wall. */
export interface BoardLayout {
  /** Boards to be fetched, without spare ones. */
  readonly boardsUsed: Quantity<"count">;
  /** Boards by area alone, for comparison. */
  readonly boardsByArea: Quantity<"count">;
  /** Face of all pieces. */
  readonly area: Quantity<"area">;
  readonly levelJoints: Quantity<"length">;
  readonly uprightJoints: Quantity<"length">;
  readonly jointLength: Quantity<"length">;
  /** Upright joints between studs: where edges are backed, the backing to order. */
  readonly jointsOffStuds: Quantity<"length">;
  /** Ends of joints that meet another joint, where its tape laps over. */
  readonly overlaps: Quantity<"count">;
  /** Ends of joints at the corner of an opening. */
  readonly jointsAtCorners: Quantity<"count">;
  /** The least width or height of a piece. */
  readonly narrowest: Quantity<"length">;
  /** Screws in all boards, where they were asked for. */
  readonly screws?: Quantity<"count">;
  readonly boards: readonly PlacedBoard[];
  readonly joints: readonly BoardJoint[];
  readonly studs: readonly LayoutStud[];
  readonly openings: readonly WallBox[];
  readonly offcuts: readonly BoardOffcut[];
  /** The box round the wall. */
  readonly wall: WallBox;
  /** The corners of the wall, anticlockwise. */
  readonly outline: readonly WallPoint[];
}

/**
 * Lays boards out on a wall with openings: every board with its size, its joints and studs, the boards it takes and,
 * where asked for, the screws.
 *
 * @example
 * ```ts
 * const layout = boardLayout({
 *   wall: { kind: "rectangle", width: "20 ft", height: "8 ft" },
 *   openings: [{ shape: { kind: "rectangle", width: "32 in", height: "4 ft" }, left: "56 in", bottom: "3 ft" }],
 *   board: { width: "4 ft", length: "8 ft" },
 *   orientation: "upright",
 *   stagger: "0 in",
 *   studs: { spacing: "16 in", start: "16 in" },
 *   edgesBacked: false,
 *   reuseOffcuts: false,
 *   screws: { spacing: "8 in" },
 * });
 * layout.boardsUsed.toString(); // "5"
 * layout.uprightJoints.toString(); // "32 ft"
 * layout.jointsOffStuds.toString(); // "0 ft"
 * ```
 */
export const boardLayout = /* @__PURE__ */ composed({
  id: "boards.board-layout",
  title: "Layout of boards on a wall",
  reads: /* @__PURE__ */ nested(layoutInput),
  run: layOut,
});

function layOut(given: ReadLayout, work: Work): BoardLayout {
  const { face, openings, pattern, spacing, firstStud } = geometryOf(given, work);
  const show = shownLike(given.board.width);
  const studs = studsOf(face, openings, spacing, firstStud);
  const courses = coursesOf(face, pattern);
  const places = placesOf(face, courses, pattern).map((place) => ({ place, pieces: piecesOf(place.box, openings, face.rakes) }));
  const { pieces, boards, offcuts } = sawingOf(places, given.reuseOffcuts);
  if (pieces.length === 0) return work.refuse(refusal(["openings"], "", say("noWallLeft")));
  const joints = jointLinesOf(face, courses, openings, pattern);
  const tally = jointTallyOf(joints, openings, studs);
  const count = given.screws === undefined ? undefined : screwCounter(given, given.screws, show, work);
  const screwed = pieces.map(({ piece }) => count?.(piece, screwLinesOf(piece, studs, given.edgesBacked, face.rakes)));
  const placed = pieces.map((piece, index) => placedBoard(piece, index, studs, show, screwed[index]));
  const area = show.area(pieces.map(({ piece }) => piece.area).reduce((total, one) => total.add(one)));
  const { placed: boardsByArea } = work.part(boardCount, { area, boardWidth: given.board.width, boardHeight: given.board.length, waste: 0 }).answers;
  tellOf(given, tally, screwed.reduce((total, one) => total + (one?.withoutRoom ?? 0), 0), show, work);
  if (placed.some(({ kind }) => kind === "cut")) work.caution("Cut boards wet, with dust drawn off, or by score and snap, and wear a mask: the dust of cement boards holds silica.");
  if (given.screws !== undefined && face.rakes.length > 0) work.caution(alongRakes);
  const box = { left: nought, bottom: nought, right: face.width, top: face.height };
  return {
    boardsUsed: show.count(boards),
    boardsByArea,
    area,
    levelJoints: show.run(tally.level),
    uprightJoints: show.run(tally.upright),
    jointLength: show.run(tally.level.add(tally.upright)),
    jointsOffStuds: show.run(tally.offStuds),
    overlaps: show.count(tally.overlaps),
    jointsAtCorners: show.count(tally.atCorners),
    narrowest: show.length(pieces.map(({ piece: { box } }) => min(widthOf(box), heightOf(box))).reduce(min)),
    ...(count === undefined ? {} : { screws: show.count(placed.reduce((total, { screws = 0 }) => total + screws, 0)) }),
    boards: placed,
    joints: joints.map((joint) => boardJoint(joint, studs, show)),
    studs: studs.lines.map(({ at, stands }) => ({ across: show.length(at), stands })),
    openings: openings.map((opening) => wallBox(opening, show)),
    offcuts: offcuts.map((offcut) => boardOffcut(offcut, show)),
    wall: wallBox(box, show),
    outline: cornersWithin(box, face.rakes).map((corner) => wallPoint(corner, show)),
  };
}

const alongRakes =
  "Raking edges carry screws only where a stud meets them, the last one the edge distance below the edge along the stud and so nearer to it across: set it lower. Where a track runs along the edge, its row of screws comes besides: fasteners.raking-screws counts it, board by board.";

/** What the layout took for granted, and what to beware of. */
function tellOf(given: ReadLayout, { offStuds, atCorners }: JointTally, withoutRoom: number, show: Shown, work: Work): void {
  work.assume(`studs: ${usualStuds.says}; boards meet them on their centre lines`);
  work.stand(usualStuds);
  if (given.start === undefined) {
    work.assume(`start: ${usualFirstBoard.says}`);
    work.stand(usualFirstBoard);
  }
  const off = show.run(offStuds).toString();
  if (offStuds.compare(nought) > 0) {
    work.caution(given.edgesBacked ? `${off} of upright joints lie between studs and need backing.` : `${off} of upright joints lie between studs without backing: no screw holds the edges there, and none is counted.`);
  }
  if (atCorners > 0) work.caution(`Ends of joints at the corner of an opening, where boards crack first: ${String(atCorners)}; common practice keeps joints away from there.`);
  if (withoutRoom > 0) work.caution(`Lines of screws that have no room at the edge distance, and are not counted: ${String(withoutRoom)}; the pieces are too narrow or too low.`);
  if (given.openings.some(({ shape }) => shape.kind !== "rectangle")) work.caution("An arched or round opening is laid out as the box round it: cut the curve from the same boards. The board beside the curve is not in the area.");
  if (given.reuseOffcuts) work.caution("Cuts take no width, and offcuts keep the way they lay; one that is broken or lost means a board more.");
}
