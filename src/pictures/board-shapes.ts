import type { PlacedBoard, WallBox, WallPoint } from "../boards/placed-board.js";
import type { Quantity } from "../core/quantity.js";
import { element, line, outline, widthOfWords, words } from "./svg.js";

/** A point on the sheet. */
export type Spot = readonly [x: number, y: number];

/** Where points of the wall lie on the sheet, and how lengths are written. */
export interface Sheet {
  readonly x: (across: Quantity<"length">) => number;
  readonly y: (up: Quantity<"length">) => number;
  readonly scaled: (length: Quantity<"length">) => number;
  readonly text: (length: Quantity<"length">) => string;
}

export const spotOf = ({ across, up }: WallPoint, sheet: Sheet): Spot => [sheet.x(across), sheet.y(up)];

/** A rectangle of the sheet. */
interface Area {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function areaOf({ left, bottom, width, height }: WallBox, sheet: Sheet): Area {
  const [x, y] = [sheet.x(left), sheet.y(bottom)];
  return { left: x, top: y - sheet.scaled(height), right: x + sheet.scaled(width), bottom: y };
}

/** A board in outline; a cut one with a diagonal from corner to corner. What openings take off is drawn over it. */
export function boardShape(board: PlacedBoard, sheet: Sheet): string {
  const corners = board.corners.map((corner) => spotOf(corner, sheet));
  return outline(corners, { "stroke-width": 1.4 }) + (board.kind === "cut" ? diagonal(corners) : "");
}

/** From a corner to the one across, or to the middle of the side across. */
function diagonal(corners: readonly Spot[]): string {
  const half = corners.length / 2;
  const [from, one, other] = [corners[0], corners[Math.floor(half)], corners[Math.ceil(half)]];
  if (from === undefined || one === undefined || other === undefined) return "";
  return line(from, [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2], { "stroke-width": 0.6 });
}

/** An opening: its outline and both diagonals. */
export function openingShape(opening: WallBox, sheet: Sheet): string {
  const { left, top, right, bottom } = areaOf(opening, sheet);
  const diagonals = line([left, top], [right, bottom], { "stroke-width": 0.6 }) + line([left, bottom], [right, top], { "stroke-width": 0.6 });
  return outline([[left, bottom], [right, bottom], [right, top], [left, top]], { "stroke-width": 1.4 }) + diagonals;
}

/** The number of a board, its size, and the board it is cut from where that is an offcut: as much as there is room for. */
export function boardLabel(board: PlacedBoard, sheet: Sheet): string {
  const room = roomIn(board, sheet);
  const [width, height] = [room.right - room.left, room.bottom - room.top];
  const middle: Spot = [(room.left + room.right) / 2, (room.top + room.bottom) / 2];
  const number = String(board.number);
  const size = `${sheet.text(board.width)} × ${sheet.text(board.height)}`;
  const all = [number, size, ...(board.fromOffcut ? [`of board ${String(board.board)}`] : [])];
  for (const lines of [all, all.slice(0, 2), [number]]) {
    for (const letters of [12, 10, 9, 8]) {
      const [long, high] = [Math.max(...lines.map((one) => widthOfWords(one, letters))) + 4, lines.length * letters * 1.2 + 2];
      if (long <= width && high <= height) return stacked(lines, middle, letters, false);
      if (long <= height && high <= width) return stacked(lines, middle, letters, true);
    }
  }
  return "";
}

function stacked(lines: readonly string[], [x, y]: Spot, size: number, turned: boolean): string {
  return lines
    .map((text, index) => {
      const shift = (index - (lines.length - 1) / 2) * size * 1.2;
      return words(text, turned ? [x + shift, y] : [x, y + shift], { size, turned });
    })
    .join("");
}

/** The largest rectangle of a board that no opening takes; under a raking edge half the box round its middle. */
function roomIn(board: PlacedBoard, sheet: Sheet): Area {
  const whole = areaOf(board, sheet);
  if (board.corners.length !== 4 || board.corners.some((corner) => !atCorner(spotOf(corner, sheet), whole))) {
    const spots = board.corners.map((corner) => spotOf(corner, sheet));
    const [x, y] = [0, 1].map((axis) => spots.reduce((sum, spot) => sum + (spot[axis] ?? 0), 0) / spots.length) as [number, number];
    const [wide, high] = [(whole.right - whole.left) / 4, (whole.bottom - whole.top) / 4];
    return { left: x - wide, right: x + wide, top: y - high, bottom: y + high };
  }
  const taken = board.cutouts.map((cutout) => areaOf(cutout, sheet));
  const xs = [...new Set([whole.left, whole.right, ...taken.flatMap(({ left, right }) => [left, right])])].sort((a, b) => a - b);
  const ys = [...new Set([whole.top, whole.bottom, ...taken.flatMap(({ top, bottom }) => [top, bottom])])].sort((a, b) => a - b);
  const size = ({ left, right, top, bottom }: Area): number => (right - left) * (bottom - top);
  const free = (area: Area): boolean => taken.every((one) => one.left >= area.right || one.right <= area.left || one.top >= area.bottom || one.bottom <= area.top);
  const areas = xs.flatMap((left) => xs.flatMap((right) => (right <= left ? [] : ys.flatMap((top) => ys.flatMap((bottom) => (bottom <= top ? [] : [{ left, right, top, bottom }]))))));
  return areas.filter(free).reduce((best, one) => (size(one) > size(best) ? one : best), { left: whole.left, right: whole.left, top: whole.top, bottom: whole.top });
}

function atCorner([x, y]: Spot, { left, right, top, bottom }: Area): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
  return (near(x, left) || near(x, right)) && (near(y, top) || near(y, bottom));
}

/** A screw as a dot. */
export function screwDot([cx, cy]: Spot): string {
  return element("circle", { cx, cy, r: 1.3 });
}
