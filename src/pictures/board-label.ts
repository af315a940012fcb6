import type { PlacedBoard } from "../boards/placed-board.js";
import { type Area, areaOf, type Sheet, type Spot, spotOf } from "./sheet.js";
import { element, widthOfWords, words } from "./svg.js";

/**
 * The number of a board, its size, and with which other it is cut from one board: as much as there is room for, nothing
 * where there is none.
 *
 * @param cutWith - the first piece of the board it comes from
 * @param withScrews - whether its screws are drawn, which words keep clear of
 */
export function boardLabel(board: PlacedBoard, cutWith: number, sheet: Sheet, withScrews: boolean): string {
  const room = roomIn(board, sheet, withScrews ? screwColumns(board, sheet) : []);
  const [width, height] = [room.right - room.left, room.bottom - room.top];
  const middle: Spot = [(room.left + room.right) / 2, (room.top + room.bottom) / 2];
  const number = String(board.number);
  const size = `${sheet.text(board.width)} × ${sheet.text(board.height)}`;
  const all = [number, size, ...(cutWith === board.number ? [] : [`with ${String(cutWith)}`])];
  for (const lines of [all, all.slice(0, 2), [number]]) {
    for (const letters of [12, 10, 9, 8]) {
      const [long, high] = [Math.max(...lines.map((one) => widthOfWords(one, letters))) + 4, lines.length * letters * 1.2 + 2];
      if (long <= width && high <= height) return stacked(lines, middle, letters, false);
      if (long <= height && high <= width) return stacked(lines, middle, letters, true);
    }
  }
  return "";
}

/** Lines of words on a white ground, so that no line runs through them. */
function stacked(lines: readonly string[], [x, y]: Spot, size: number, turned: boolean): string {
  const [long, high] = [Math.max(...lines.map((one) => widthOfWords(one, size))), lines.length * size * 1.2];
  const [width, height] = turned ? [high, long] : [long, high];
  const texts = lines.map((text, index) => {
    const shift = (index - (lines.length - 1) / 2) * size * 1.2;
    return words(text, turned ? [x + shift, y] : [x, y + shift], { size, turned });
  });
  return element("rect", { x: x - width / 2, y: y - height / 2, width, height, stroke: "none" }) + texts.join("");
}

/** What the dots of the screws take up, line by line. */
function screwColumns({ screwLines = [] }: PlacedBoard, sheet: Sheet): readonly Area[] {
  return screwLines.map(({ across, bottom, spacing, screws }) => {
    const [x, y] = [sheet.x(across), sheet.y(bottom)];
    return { left: x - 2, right: x + 2, bottom: y + 2, top: y - sheet.scaled(spacing) * (screws - 1) - 2 };
  });
}

/** The largest rectangle of a board that no opening and no line of screws takes; under a raking edge half the box round its middle. */
function roomIn(board: PlacedBoard, sheet: Sheet, screws: readonly Area[]): Area {
  const whole = areaOf(board, sheet);
  if (board.corners.length !== 4 || board.corners.some((corner) => !atCorner(spotOf(corner, sheet), whole))) {
    const spots = board.corners.map((corner) => spotOf(corner, sheet));
    const [x, y] = [0, 1].map((axis) => spots.reduce((sum, spot) => sum + (spot[axis] ?? 0), 0) / spots.length) as [number, number];
    const [wide, high] = [(whole.right - whole.left) / 4, (whole.bottom - whole.top) / 4];
    return { left: x - wide, right: x + wide, top: y - high, bottom: y + high };
  }
  const taken = [...board.cutouts.map((cutout) => areaOf(cutout, sheet)), ...screws];
  const xs = [...new Set([whole.left, whole.right, ...taken.flatMap(({ left, right }) => [left, right].filter((x) => x > whole.left && x < whole.right))])].sort((a, b) => a - b);
  const ys = [...new Set([whole.top, whole.bottom, ...taken.flatMap(({ top, bottom }) => [top, bottom].filter((y) => y > whole.top && y < whole.bottom))])].sort((a, b) => a - b);
  const size = ({ left, right, top, bottom }: Area): number => (right - left) * (bottom - top);
  const free = (area: Area): boolean => taken.every((one) => one.left >= area.right || one.right <= area.left || one.top >= area.bottom || one.bottom <= area.top);
  const areas = xs.flatMap((left) => xs.flatMap((right) => (right <= left ? [] : ys.flatMap((top) => ys.flatMap((bottom) => (bottom <= top ? [] : [{ left, right, top, bottom }]))))));
  return areas.filter(free).reduce((best, one) => (size(one) > size(best) ? one : best), { left: whole.left, right: whole.left, top: whole.top, bottom: whole.top });
}

function atCorner([x, y]: Spot, { left, right, top, bottom }: Area): boolean {
  const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;
  return (near(x, left) || near(x, right)) && (near(y, top) || near(y, bottom));
}
