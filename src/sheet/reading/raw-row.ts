import Papa from "papaparse";
import { InputError, type Path, type Problem, problem } from "../../core/problems.js";
import { refusal } from "../../core/refuse-all.js";
import type { Words } from "../../core/wording.js";

/** What a sheet is read from: its text, or texts or bytes one after the other, such as an open file. */
export type RowSource = string | Uint8Array | AsyncIterable<string | Uint8Array> | Iterable<string | Uint8Array>;

/** A cell as it was read: its text without blanks around, and whether the file has it as a number. */
export interface RawCell {
  readonly text: string;
  readonly isNumber?: boolean;
}

/** A row as it was read, with its number as a spreadsheet counts; what is wrong with it, where it cannot be read. */
export interface RawRow {
  readonly row: number;
  readonly cells: readonly (RawCell | undefined)[];
  readonly fault?: Problem;
}

/** What stands between the cells of a CSV. */
export type Delimiter = "," | ";" | "\t";

/** How a file is read. */
export interface FileOptions {
  /** What stands between the cells of a CSV; found by the first row unless told. */
  readonly delimiter?: Delimiter;
  /** The sheet of a workbook by its title; the first unless told. */
  readonly sheet?: string;
}

/** More letters than a row of a sheet has. */
export const longestRow = 1_000_000;
/** More columns than an estimator's sheet has. */
export const mostColumns = 1_000;

/** A problem of the file or of a place in it. */
export function trouble(path: Path, given: string | Words, wanted: Words): Problem {
  return problem(refusal(path, given, wanted));
}

/** Ends the reading where there are problems. */
export function refuse(...problems: readonly Problem[]): void {
  if (problems.length > 0) throw new InputError("sheet.read-rows", problems);
}

/** A text as papaparse has it: its rows, or the first so many of them. */
export function parsed(text: string, delimiter: Delimiter, preview = 0): ReturnType<InstanceType<typeof Papa.Parser>["parse"]> {
  return new Papa.Parser({ delimiter, newline: "\n", preview }).parse(text, 0, false);
}
