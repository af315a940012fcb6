import type { BoardLayout } from "../boards/board-layout.js";
import type { WallBox } from "../boards/placed-board.js";
import type { Quantity } from "../core/quantity.js";
import { compare, subtract, sum } from "../core/quantity-arithmetic.js";
import { writeQuantity } from "../core/write-quantity.js";
import { areaOf, boardLabel, boardShape, openingShape, screwDot, type Sheet, spotOf } from "./board-shapes.js";
import { chainBelow, chainBeside, chainRoom, type Stop } from "./dimension-lines.js";
import { drawn, element, escaped, line, outline, widthOfWords, words } from "./svg.js";

type Length = Quantity<"length">;

/** What a picture of boards shows besides. */
export interface ElevationOptions {
  /** Printed over the picture, and read out for it. */
  readonly title?: string;
  /** Draws every screw as a dot; the layout must have been asked for screws. */
  readonly screws?: boolean;
}

/** The most the wall takes up on the sheet. */
const [mostWide, mostHigh] = [900, 600];
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
export function boardElevation(layout: BoardLayout, { title = "Boards on a wall", screws = false }: ElevationOptions = {}): string {
  const { wall, openings } = layout;
  const across = stopsOf(wall.width, openings.map(({ left, width }) => [left, sum([left, width])] as const));
  const up = stopsOf(wall.height, openings.map(({ bottom, height }) => [bottom, sum([bottom, height])] as const));
  const scale = Math.min(mostWide / wall.width.toNumber("in"), mostHigh / wall.height.toNumber("in"));
  const scaled = (length: Length): number => length.toNumber("in") * scale;
  const chains = (stops: readonly Length[], at: (place: Length) => number): readonly (readonly Stop[])[] => {
    const written = stops.map((place, index): Stop => ({ at: at(place), text: index + 1 < stops.length ? dimensionText(subtract(stops[index + 1] as Length, place)) : "" }));
    const [first, last] = [written[0], written.at(-1)];
    const whole = first === undefined || last === undefined ? [] : [{ ...first, text: dimensionText(subtract(stops.at(-1) as Length, stops[0] as Length)) }, last];
    return stops.length > 2 ? [written, whole] : [whole];
  };
  const beside = chains(up, scaled);
  const top = 46;
  const left = 16 + beside.reduce((room, chain) => room + chainRoom(chain), 0);
  const bottom = top + scaled(wall.height);
  const sheet: Sheet = { scaled, x: (place) => left + scaled(place), y: (place) => bottom - scaled(place), text: sizeText };
  const below = chains(across, sheet.x);
  const columns = chains(up, sheet.y);
  let [y, x] = [bottom + 16, left - 16];
  const dimensions = [
    ...below.map((chain) => {
      const here = chainBelow(chain, y, bottom);
      y += chainRoom(chain);
      return here;
    }),
    ...columns.map((chain) => {
      const here = chainBeside(chain, x, left);
      x -= chainRoom(chain);
      return here;
    }),
  ];
  const width = Math.max(left + scaled(wall.width) + 16, 420);
  const legend = wrapped(legendOf(layout, screws), width - 32);
  const height = y + 10 + legend.length * 16;
  const parts = [
    words(title, [16, 22], { size: 16, anchor: "start" }),
    group("boards", layout.boards.map((board) => boardShape(board, sheet))),
    group("openings", openings.map((opening) => openingShape(opening, sheet))),
    group("studs", studLines(layout, sheet)),
    group("joints off studs", layout.joints.filter(({ onStud }) => onStud === false).map(({ left: place, bottom: foot, length }) => offStud(sheet.x(place), sheet.y(foot) - scaled(length) / 2))),
    group("wall", [outline(layout.outline.map((corner) => spotOf(corner, sheet)), { "stroke-width": 2.2, fill: "none" })]),
    screws ? group("screws", screwDots(layout, sheet), { fill: "black", stroke: "none" }) : "",
    group("labels", layout.boards.map((board) => boardLabel(board, sheet))),
    ...dimensions,
    ...legend.map((text, index) => words(text, [16, y + 8 + index * 16], { size: small, anchor: "start" })),
  ];
  return element(
    "svg",
    { xmlns: "http://www.w3.org/2000/svg", viewBox: `0 0 ${drawn(width)} ${drawn(height)}`, role: "img", "font-family": "sans-serif", fill: "white", stroke: "black", "stroke-linejoin": "round" },
    element("title", {}, escaped(title)),
    element("desc", {}, escaped(described(layout))),
    element("style", {}, "text{fill:black;stroke:white;stroke-width:3px;paint-order:stroke}"),
    element("rect", { width, height, stroke: "none" }),
    ...parts,
  );
}
