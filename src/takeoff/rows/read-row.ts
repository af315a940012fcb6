import { type Problem, problem, shown } from "../../core/problems.js";
import { say } from "../refusals.js";
import type { Cells } from "./fill-wall.js";
import type { Form } from "./form.js";

/** A row as it came: its number and its cells, or what is wrong with it; once its form is known, its place among the rows of that. */
export interface RowRead {
  readonly row: number;
  readonly cells: Cells;
  readonly problems: readonly Problem[] | undefined;
  form: Form | undefined;
  at: number;
  /** What stands in the columns that it is filled from: its cells may be written over before its working is asked for. */
  readonly kept: unknown[];
}

/** Reads what is given as a row. */
export function readRow(given: unknown, next: number): RowRead {
  if (typeof given !== "object" || given === null || Array.isArray(given)) {
    return rowOf(next, {}, [problem({ code: "wrongKind", path: ["rows", next], given: shown(given), wanted: say("writeARow") })]);
  }
  const { row: number, cells, value = cells, problems } = given as { readonly row?: unknown; readonly cells?: unknown; readonly value?: unknown; readonly problems?: unknown };
  if (typeof number === "number" && Array.isArray(problems)) return rowOf(number, {}, problems as readonly Problem[]);
  if (typeof number === "number" && typeof value === "object" && value !== null) return rowOf(number, value as Cells);
  return rowOf(next, given as Cells);
}

function rowOf(row: number, cells: Cells, problems?: readonly Problem[]): RowRead {
  return { row, cells, problems, form: undefined, at: 0, kept: [] };
}
