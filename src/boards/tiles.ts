import type { Fraction } from "../core/fraction.js";
import { type Box, inOrder, shared } from "../shapes/face.js";

/** A box cut along the edges of other boxes: tiles in columns, from the left, and rows, from the bottom. */
export interface Tiling {
  readonly columns: number;
  readonly rows: number;
  /** The tile of a column and a row. */
  readonly tile: (column: number, row: number) => Box;
}

/** Cuts a box along the edges of other boxes that reach into it. */
export function tilingOf(box: Box, others: readonly Box[]): Tiling {
  const inside = others.flatMap((other) => shared(box, other) ?? []);
  const across = inOrder([box.left, box.right, ...inside.flatMap(({ left, right }) => [left, right])]);
  const up = inOrder([box.bottom, box.top, ...inside.flatMap(({ bottom, top }) => [bottom, top])]);
  const at = (list: readonly Fraction[], index: number): Fraction => list[index] as Fraction;
  return {
    columns: across.length - 1,
    rows: up.length - 1,
    tile: (column, row) => ({ left: at(across, column), right: at(across, column + 1), bottom: at(up, row), top: at(up, row + 1) }),
  };
}

/** Whether a tile lies in one of the boxes it was cut along. */
export function covered(tile: Box, boxes: readonly Box[]): boolean {
  return boxes.some((box) => shared(tile, box) !== undefined);
}

/** What some boxes leave of another one, as boxes that do not overlap: each as wide as can be, then as high. */
export function leftOf(box: Box, taken: readonly Box[]): readonly Box[] {
  const { columns, rows, tile } = tilingOf(box, taken);
  const done = new Set<number>();
  const free = (column: number, row: number): boolean => column < columns && row < rows && !done.has(row * columns + column) && !covered(tile(column, row), taken);
  const found: Box[] = [];
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      if (!free(column, row)) continue;
      let [right, top] = [column + 1, row + 1];
      while (free(right, row)) right += 1;
      const wholeRow = (at: number): boolean => Array.from({ length: right - column }, (_, index) => column + index).every((one) => free(one, at));
      while (wholeRow(top)) top += 1;
      for (let y = row; y < top; y += 1) for (let x = column; x < right; x += 1) done.add(y * columns + x);
      const [from, to] = [tile(column, row), tile(right - 1, top - 1)];
      found.push({ left: from.left, bottom: from.bottom, right: to.right, top: to.top });
    }
  }
  return found;
}
