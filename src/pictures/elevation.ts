import type { BoardLayout } from "../boards/board-layout.js";
import { isNought } from "../core/quantity-arithmetic.js";
import { unitSystem } from "../core/units.js";
import { boardLabel } from "./board-label.js";
import { boardShape, offStudMark, openingShape, screwDots, studLines } from "./board-shapes.js";
import { dimensionText, sheetFor, spotOf } from "./sheet.js";
import { drawn, element, escaped, outline, widthOfWords, words } from "./svg.js";

/** What a picture of boards shows besides. */
export interface ElevationOptions {
  /** Printed over the picture, and read out for it. */
  readonly title?: string;
  /** Draws every screw as a dot, where the layout was asked for screws. */
  readonly screws?: boolean;
}

const small = 11;

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
  const { title = "Boards on a wall", screws = false } = options;
  const { sheet, dimensions, right, bottom } = sheetFor(layout, 46);
  const width = Math.max(right, 420);
  const firstOf = new Map([...layout.boards].reverse().map(({ board, number }) => [board, number]));
  const labels = layout.boards.map((board) => boardLabel(board, firstOf.get(board.board) ?? board.number, sheet));
  const legend = wrapped(legendOf(layout, screws, labels.includes("")), width - 32);
  const height = bottom + 8 + legend.length * 16;
  const off = layout.joints.filter(({ onStud }) => onStud === false);
  return element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${drawn(width)} ${drawn(height)}`, role: "img", "font-family": "sans-serif", fill: "white", stroke: "black", "stroke-linejoin": "round" },
    element("title", {}, escaped(title)),
    element("desc", {}, escaped(described(layout))),
    element("rect", { width, height, stroke: "none" }),
    words(title, [16, 22], { size: Math.min(16, (16 * (width - 32)) / widthOfWords(title, 16)), anchor: "start" }),
    group("boards", [...layout.boards].sort((a, b) => b.area.toNumber() - a.area.toNumber()).map((board) => boardShape(board, sheet))),
    group("openings", layout.openings.map((opening) => openingShape(opening, sheet))),
    group("studs", studLines(layout, sheet), { "stroke-width": 0.7, "stroke-dasharray": "7 4" }),
    group("joints between studs", off.map((joint) => offStudMark(joint, sheet))),
    group("wall", [outline(layout.outline.map((corner) => spotOf(corner, sheet)), { "stroke-width": 2.4, fill: "none" })]),
    group("labels", labels),
    group("screws", screws ? layout.boards.flatMap((board) => screwDots(board, sheet)) : [], { fill: "black", stroke: "none" }),
    group("dimensions", dimensions),
    group("legend", legend.map((text, index) => words(text, [16, bottom + 8 + index * 16], { size: small, anchor: "start" }))),
  );
}

function group(name: string, parts: readonly string[], attributes: Readonly<Record<string, string | number>> = {}): string {
  return parts.length === 0 ? "" : element("g", { class: name.replaceAll(" ", "-"), ...attributes }, ...parts);
}

/** The picture in words. */
function described({ wall, openings, boards, boardsUsed, studs, jointsOffStuds }: BoardLayout): string {
  const cut = boards.filter(({ kind }) => kind === "cut").length;
  const off = isNought(jointsOffStuds) ? "All upright joints lie on studs." : `${dimensionText(jointsOffStuds)} of upright joints lie between studs.`;
  return [
    `A wall ${dimensionText(wall.width)} wide and ${dimensionText(wall.height)} high with ${counted(openings.length, "opening")} and ${counted(studs.length, "stud")}.`,
    `It is covered by ${counted(boards.length, "piece")}, ${String(cut)} of them cut, from ${counted(boardsUsed.toNumber(), "board")}.`,
    off,
  ].join(" ");
}

const counted = (number: number, what: string): string => `${number === 0 ? "no" : String(number)} ${what}${number === 1 ? "" : "s"}`;

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

/** Sentences put together in lines that are not too wide. */
function wrapped(sentences: readonly string[], width: number): readonly string[] {
  const lines: string[] = [];
  for (const sentence of sentences) {
    const longer = `${lines.at(-1) ?? ""} ${sentence}`.trim();
    if (lines.length > 0 && widthOfWords(longer, small) <= width) lines[lines.length - 1] = longer;
    else lines.push(sentence);
  }
  return lines;
}
