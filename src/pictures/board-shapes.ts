import type { BoardLayout } from "../boards/board-layout.js";
import type { BoardJoint, PlacedBoard, WallBox } from "../boards/placed-board.js";
import { areaOf, type Sheet, type Spot, spotOf } from "./sheet.js";
import { element, line, outline } from "./svg.js";

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

/** A joint between two studs: a small triangle on its middle. */
export function offStudMark({ left, bottom, length }: BoardJoint, sheet: Sheet): string {
  const [x, y] = [sheet.x(left), sheet.y(bottom) - sheet.scaled(length) / 2];
  return outline([[x - 5, y + 4], [x + 5, y + 4], [x, y - 5]]);
}

/** The studs: dashed, from the foot of the wall to its top, but not through openings. */
export function studLines({ studs, outline: corners, openings }: BoardLayout, sheet: Sheet): readonly string[] {
  const spots = corners.map((corner) => spotOf(corner, sheet));
  const areas = openings.map((opening) => areaOf(opening, sheet));
  return studs.flatMap(({ across }) => {
    const x = sheet.x(across);
    const through = areas.filter(({ left, right }) => left < x - 0.01 && x + 0.01 < right).sort((a, b) => a.top - b.top);
    const ends = spots.flatMap((spot, index) => heightsAt(x, spot, spots[(index + 1) % spots.length] ?? spot));
    const stops = [Math.min(...ends), ...through.flatMap(({ top, bottom }) => [top, bottom]), Math.max(...ends)];
    return stops.flatMap((y, index) => (index % 2 === 1 || (stops[index + 1] ?? y) - y < 0.01 ? [] : [line([x, y], [x, stops[index + 1] ?? y])]));
  });
}

/** Where an edge passes an upright line. */
function heightsAt(x: number, from: Spot, to: Spot): readonly number[] {
  if (x < Math.min(from[0], to[0]) - 0.01 || x > Math.max(from[0], to[0]) + 0.01) return [];
  return from[0] === to[0] ? [from[1], to[1]] : [from[1] + ((to[1] - from[1]) * (x - from[0])) / (to[0] - from[0])];
}

/** Every screw of a board as a dot. */
export function screwDots({ screwLines = [] }: PlacedBoard, sheet: Sheet): readonly string[] {
  return screwLines.flatMap(({ across, bottom, spacing, screws }) =>
    Array.from({ length: screws }, (_, index) => element("circle", { cx: sheet.x(across), cy: sheet.y(bottom) - index * sheet.scaled(spacing), r: 1.3 })),
  );
}
