import type { Problem } from "../../core/problems.js";
import type { Assembly } from "../job.js";
import type { Cells, WallPattern } from "./fill-wall.js";
import type { RowTotals } from "./row-totals.js";
import type { TakenWall } from "./worked-row.js";

/** A row: its cells by the names of the columns, or what `readRows` or `readTable` of `settingbed/sheet` gives. */
export type WallRow = Cells | { readonly row: number; readonly cells: Cells } | { readonly row: number; readonly value: Cells } | { readonly row: number; readonly problems: readonly Problem[] };

/** How rows are taken off. */
export interface RowOptions {
  /** How all walls are built and bought; it is read once. */
  readonly assembly: Assembly;
  /** One elevation of a job, with `{ column: "…" }` in the place of what a row says. */
  readonly wall: WallPattern;
  /** Called after every row. */
  readonly progress?: (done: { readonly rows: number; readonly refused: number }) => void;
  /** Ends the work with its reason. */
  readonly signal?: AbortSignal;
}

/** What came of one row: its order list, or everything that is wrong with it. */
export type TakenRow = TakenWall | { readonly ok: false; readonly row: number; readonly problems: readonly Problem[] };

/** Rows that are taken off as they are asked for, once. */
export interface TakenRows extends AsyncIterable<TakenRow> {
  /** What has come of all rows so far; whole once the last row has come. */
  readonly totals: () => RowTotals;
}
