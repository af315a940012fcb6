/** What a cell is for; the look follows from it. */
export type CellUse = "title" | "note" | "head" | "numberHead" | "group" | "text" | "number" | "input" | "answer" | "faint" | "faintNumber" | "strong";

/** One cell of a sheet. */
export interface Cell {
  readonly use: CellUse;
  /** A text, or a number; beside a formula what it gives, for programs that do not work it out. */
  readonly value?: string | number;
  /** Without its equals sign. */
  readonly formula?: string;
  /** The number format; General where none is given. */
  readonly format?: string;
  /** The defined name of the cell. */
  readonly name?: string;
  /** What an input must be, in a formula that is true where it is, and in words. */
  readonly must?: { readonly formula: string; readonly says: string };
}

/** A row of cells; nothing where a cell is empty. */
export type Row = readonly (Cell | undefined)[];

/** One sheet of a workbook. */
export interface Page {
  readonly title: string;
  /** The widths of the columns, in letters. */
  readonly widths: readonly number[];
  readonly rows: readonly Row[];
  /** How many rows stay in sight and are printed on every page. */
  readonly heads: number;
  /** Columns that stay in sight. */
  readonly fixedColumns?: number;
  readonly landscape?: boolean;
}

/** `1` as A, `27` as AA. */
function columnLetters(column: number): string {
  const rest = Math.floor((column - 1) / 26);
  return (rest > 0 ? columnLetters(rest) : "") + String.fromCharCode(65 + ((column - 1) % 26));
}

/** The address of a cell on its own sheet: column and row counted from 1. */
export function address(column: number, row: number): string {
  return `${columnLetters(column)}${String(row)}`;
}

/** The address of a cell from any sheet, which does not move when it is copied: `'Wall 1'!$B$4`. */
export function fullAddress(title: string, column: number, row: number): string {
  return `'${title.replaceAll("'", "''")}'!$${columnLetters(column)}$${String(row)}`;
}

/** The row of heads; those over numbers stand to the right. */
export function headRow(heads: readonly string[], overNumbers: readonly string[]): Row {
  return heads.map((value) => ({ use: overNumbers.includes(value) ? "numberHead" : "head", value }));
}

/** A row that begins a group, across so many columns. */
export function groupRow(heading: string, columns: number): Row {
  return Array.from({ length: columns }, (_, index) => (index === 0 ? { use: "group", value: heading } : { use: "group" }));
}
