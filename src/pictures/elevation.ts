import type { BoardLayout } from "../boards/board-layout.js";
import { isNought } from "../core/quantity-arithmetic.js";
import { unitSystem } from "../core/units.js";
import { boardLabel } from "./board-label.js";
import { boardShape, offStudMark, openingShape, screwDots, studLines } from "./board-shapes.js";
import { counted, group, leastWidth, picture, type PictureOptions, underTitle } from "./picture.js";
import { say } from "./refusals.js";
import { answersOf, boxOnWall, having, listOf, lookAt, maybe, measured, oneOf, plain, refuse } from "./results.js";
import { dimensionText, sheetFor, spotOf } from "./sheet.js";
import { outline } from "./svg.js";

/** What a picture of boards shows besides. */
export interface ElevationOptions extends PictureOptions {
  /** Draws every screw as a dot, where the layout was asked for screws. */
  readonly screws?: boolean;
}

/**
 * Draws the elevation of a layout of boards as SVG, in black on white: board edges as full lines, a cut board with a
 * diagonal, openings crossed, studs dashed, and dimensions.
 *
 * @param layout - the answers of `boardLayout`
 * @param options - a title, and whether to draw the screws
 * @returns the text of an SVG document, with a title and a description for those who do not see it
 * @example
 * ```ts
 * const layout = boardLayout({
 *   wall: { kind: "rectangle", width: "20 ft", height: "8 ft" },
 *   openings: [],
 *   board: { width: "4 ft", length: "8 ft" },
 *   orientation: "upright",
 *   stagger: "0 in",
 *   studs: { spacing: "16 in", start: "16 in" },
 *   edgesBacked: false,
 *   reuseOffcuts: false,
 * });
 * boardElevation(layout, { title: "North wall" }).startsWith("<svg"); // true
 * ```
 */
export function boardElevation(layout: BoardLayout, options: ElevationOptions = {}): string {
  lookAt("pictures.board-elevation", layout, drawnLayout);
  const { title = "Boards on a wall", screws = false } = options;
  if (screws && layout.screws === undefined) refuse("pictures.board-elevation", ["screws"], "", say("layoutHasNoScrews"));
  const { sheet, dimensions, right, bottom } = sheetFor(layout, underTitle);
  const firstOf = new Map([...layout.boards].reverse().map(({ board, number }) => [board, number]));
  const labels = layout.boards.map((board) => boardLabel(board, firstOf.get(board.board) ?? board.number, sheet, screws));
  const off = layout.joints.filter(({ onStud }) => onStud === false);
  return picture(
    { title, says: described(layout, screws), width: Math.max(right, leastWidth), bottom, legend: legendOf(layout, screws, labels.includes("")) },
    group("boards", [...layout.boards].sort((a, b) => b.area.toNumber() - a.area.toNumber()).map((board) => boardShape(board, sheet))),
    group("openings", layout.openings.map((opening) => openingShape(opening, sheet))),
    group("studs", studLines(layout, sheet), { "stroke-width": 0.7, "stroke-dasharray": "7 4" }),
    group("joints between studs", off.map((joint) => offStudMark(joint, sheet))),
    group("wall", [outline(layout.outline.map((corner) => spotOf(corner, sheet)), { "stroke-width": 2.4, fill: "none" })]),
    group("labels", labels),
    group("screws", screws ? layout.boards.flatMap((board) => screwDots(board, sheet)) : [], { fill: "black", stroke: "none" }),
    group("dimensions", dimensions),
  );
}

const drawnLayout = /* @__PURE__ */ (() => {
  const point = having({ across: measured("length"), up: measured("length") });
  return answersOf("boardLayout", {
    wall: boxOnWall(),
    outline: listOf(point, 3),
    openings: listOf(boxOnWall()),
    boards: listOf(boxOnWall({ number: plain("number"), board: plain("number"), kind: oneOf("whole", "cut"), area: measured("area"), corners: listOf(point, 3), cutouts: listOf(boxOnWall()) })),
    boardsUsed: measured("count"),
    studs: listOf(having({ across: measured("length") })),
    joints: listOf(having({ left: measured("length"), bottom: measured("length"), length: measured("length") })),
    jointsOffStuds: measured("length"),
    screws: maybe(measured("count")),
  });
})();

/** The picture in words. */
function described({ wall, openings, boards, boardsUsed, studs, jointsOffStuds, screws }: BoardLayout, withScrews: boolean): string {
  const cut = boards.filter(({ kind }) => kind === "cut").length;
  const off = isNought(jointsOffStuds) ? "All upright joints lie on studs." : `${dimensionText(jointsOffStuds)} of upright joints lie between studs.`;
  return [
    `A wall ${dimensionText(wall.width)} wide and ${dimensionText(wall.height)} high with ${counted(openings.length, "opening")} and ${counted(studs.length, "stud")}.`,
    `It is covered by ${counted(boards.length, "piece")}, ${String(cut)} of them cut, from ${counted(boardsUsed.toNumber(), "board")}.`,
    off,
    ...(withScrews && screws !== undefined ? [`It takes ${counted(screws.toNumber(), "screw")}, each drawn as a dot.`] : []),
  ].join(" ");
}

/** What the lines mean, of those that there are. */
function legendOf({ wall, boards, openings, jointsOffStuds }: BoardLayout, screws: boolean, unlabelled: boolean): readonly string[] {
  const unit = unitSystem(wall.width.unit) === "si" ? "millimetres" : "inches";
  return [
    "Full line: edge of a board.",
    ...(boards.some(({ kind }) => kind === "cut") ? ["One diagonal: a cut board."] : []),
    ...(openings.length > 0 ? ["Crossed: an opening."] : []),
    "Dashed: a stud.",
    ...(isNought(jointsOffStuds) ? [] : ["Triangle: a joint between studs."]),
    ...(screws ? ["Dot: a screw."] : []),
    `In a piece: its number in the order of placing, width × height in ${unit}.`,
    ...(new Set(boards.map(({ board }) => board)).size < boards.length ? ["With 3: from one board with piece 3."] : []),
    ...(unlabelled ? ["A piece too small for its number has none."] : []),
  ];
}
