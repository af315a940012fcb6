import type { Area } from "./sheet.js";
import { drawn, element } from "./svg.js";

/** Ways to fill an area with black lines on white, which a black and white print keeps apart. */
export type Hatch = "empty" | "rising lines" | "falling lines" | "crossed lines" | "level lines" | "dots" | "dots and triangles" | "zigzag" | "diagonals" | "black" | "dashes";

/**
 * An area, filled. The lines are drawn one by one, so that nothing in the picture needs a name; they lie on one grid for the
 * whole sheet, so that they run on from an area into the next.
 */
export function hatched(area: Area, hatch: Hatch, { spacing = 8, outlined = true }: { readonly spacing?: number; readonly outlined?: boolean } = {}): string {
  const { left, top, right, bottom } = area;
  const box = element("rect", { x: left, y: top, width: right - left, height: bottom - top, fill: hatch === "black" ? "black" : "white", ...(outlined ? { "stroke-width": 1 } : { stroke: "none" }) });
  const lines = linesOf(area, hatch, spacing);
  return lines === "" ? box : box + element("path", { d: lines, fill: "none", "stroke-width": hatch.startsWith("dots") ? 1.4 : 0.7, "stroke-linecap": "round" });
}

type Stroke = readonly (readonly [x: number, y: number])[];

function linesOf(area: Area, hatch: Hatch, spacing: number): string {
  const { left, top, right, bottom } = area;
  switch (hatch) {
    case "empty":
    case "black":
      return "";
    case "rising lines":
      return pathOf(slanted(area, spacing, 1));
    case "falling lines":
      return pathOf(slanted(area, spacing, -1));
    case "crossed lines":
      return pathOf([...slanted(area, spacing, 1), ...slanted(area, spacing, -1)]);
    case "level lines":
      return pathOf(between(top, bottom, spacing / 2).map((y): Stroke => [[left, y], [right, y]]));
    case "diagonals":
      return pathOf([[[left, top], [right, bottom]], [[left, bottom], [right, top]]]);
    case "dashes":
      return pathOf(between(left, right, spacing * 1.5).map((x): Stroke => [[x, (top + bottom) / 2], [Math.min(x + spacing * 0.8, right), (top + bottom) / 2]]));
    case "zigzag":
      return pathOf([between(left, right, spacing).map((x): readonly [number, number] => [x, Math.round(x / spacing) % 2 === 0 ? top : bottom])]);
    case "dots":
      return pathOf(scattered(area, spacing * 0.75).map(([x, y]): Stroke => [[x, y], [x + 0.01, y]]));
    case "dots and triangles":
      return pathOf(scattered(area, spacing * 1.25).map(([x, y], index): Stroke => (index % 3 === 0 && inside(area, x, y, 3) ? [[x - 2.5, y + 2], [x + 2.5, y + 2], [x, y - 2.5], [x - 2.5, y + 2]] : [[x, y], [x + 0.01, y]])));
  }
}

function pathOf(strokes: readonly Stroke[]): string {
  return strokes.map((stroke) => stroke.map(([x, y], index) => `${index === 0 ? "M" : "L"}${drawn(x)} ${drawn(y)}`).join("")).join("");
}

/** The multiples of a step strictly between two ends. */
function between(from: number, until: number, step: number): readonly number[] {
  const first = Math.floor(from / step + 1e-9) + 1;
  return Array.from({ length: Math.max(0, Math.ceil(until / step - 1e-9) - first) }, (_, index) => (first + index) * step);
}

/** Lines at 45 degrees, cut off at the edges; they rise to the right with 1, and fall with -1. */
function slanted({ left, top, right, bottom }: Area, spacing: number, rise: 1 | -1): readonly Stroke[] {
  // On such a line x and rise * y come to the same sum all along.
  const [low, high] = rise === 1 ? [top, bottom] : [-bottom, -top];
  return between(left + low, right + high, spacing * Math.SQRT2).map((sum): Stroke => {
    const [from, until] = [Math.max(left, sum - high), Math.min(right, sum - low)];
    return [[from, rise * (sum - from)], [until, rise * (sum - until)]];
  });
}

/** Places in rows, every other row shifted by half; one row in the middle of an area that is too low for any. */
function scattered({ left, top, right, bottom }: Area, spacing: number): readonly (readonly [number, number])[] {
  const found = between(top + 2, bottom - 2, spacing);
  const rows = found.length === 0 ? [(top + bottom) / 2] : found;
  return rows.flatMap((y) => {
    const shift = Math.round(y / spacing) % 2 === 0 ? 0 : spacing / 2;
    return between(left + 1 - shift, right - 1 - shift, spacing).map((x) => [x + shift, y] as const);
  });
}

function inside({ left, top, right, bottom }: Area, x: number, y: number, by: number): boolean {
  return x - by > left && x + by < right && y - by > top && y + by < bottom;
}
