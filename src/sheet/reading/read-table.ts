import { InputError, type Problem, problem } from "../../core/problems.js";
import type { Columns, RowOf } from "./columns.js";
import { findColumns, type FoundColumn, type Headings } from "./header.js";
import type { FileOptions, RawRow, RowSource } from "./raw-row.js";
import { readCell } from "./read-cell.js";
import { headedRows } from "./read-rows.js";

/** How a table is read. */
export interface TableOptions<C extends Columns = Columns> extends FileOptions {
  /** Headings of your own, by the names of what is read. */
  readonly headings?: Headings<C>;
  /** Whether decimals have a comma, as `12,5`, in the cells that are texts. */
  readonly decimalComma?: boolean;
}

/** A row that was read, or what is wrong with it. */
export type TableRow<Value> =
  | { readonly row: number; readonly ok: true; readonly value: Value }
  | { readonly row: number; readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads a sheet row by row into quantities, texts and choices. Columns are known by plain words or by headings of your
 * own, and stand in any order; units stand in the heading or in the cell. A row that cannot be read says which cell and
 * why, and the others go on. Columns that are not asked for are passed over.
 *
 * @param source - a CSV or a workbook: its text or bytes, or a stream of them
 * @param columns - what is read of each row
 * @param options - headings of your own, decimal commas, which sheet
 * @returns the rows as an async generator, each with its value or its problems
 * @throws InputError for what is no sheet, or where a column is missing
 * @example
 * ```ts
 * const columns = { width: { is: "length", names: ["width"], says: "width of the wall" } } as const;
 * const { value: first } = await readTable("wall,width (ft)\nnorth,40\n", columns).next();
 * first.value.width.toString(); // "40 ft"
 * ```
 */
export async function* readTable<const C extends Columns>(source: RowSource, columns: C, options: TableOptions<C> = {}): AsyncGenerator<TableRow<RowOf<C>>, void, undefined> {
  let found: readonly FoundColumn[] | undefined;
  for await (const raw of headedRows(source, options)) {
    if (found === undefined) {
      const read = findColumns(columns, raw.cells, options.headings ?? {});
      if (areProblems(read)) throw new InputError("sheet.read-table", read);
      found = read;
      continue;
    }
    const { row, fault } = raw;
    const problems: Problem[] = fault === undefined ? [] : [fault];
    const value = readRow(raw, columns, found, options.decimalComma === true, problems);
    yield Object.freeze(problems.length > 0 ? { row, ok: false, problems: Object.freeze(problems) } : { row, ok: true, value: value as RowOf<C> });
  }
}

function areProblems(read: readonly FoundColumn[] | readonly Problem[]): read is readonly Problem[] {
  return read.some((one) => "code" in one);
}

function readRow({ row, cells }: RawRow, columns: Columns, found: readonly FoundColumn[], decimalComma: boolean, problems: Problem[]): Readonly<Record<string, unknown>> {
  const value: Record<string, unknown> = {};
  for (const [key, { several, optional, says }] of Object.entries(columns)) {
    const own = found.filter((one) => one.key === key);
    const filled = own.flatMap((one) => {
      const cell = cells[one.at];
      if (cell === undefined) return [];
      const read = readCell(cell, one, row, decimalComma);
      if ("value" in read) return [read.value];
      problems.push(read);
      return [undefined];
    });
    if (filled.length === 0 && optional !== true) problems.push(problem({ code: "missing", path: ["rows", row, own[0]?.heading ?? key], says, given: "", wanted: "" }));
    if (several === true) value[key] = Object.freeze(filled);
    else if (filled.length > 0) value[key] = filled[0];
  }
  return Object.freeze(value);
}

/**
 * Reads all rows of a table: the values of those that could be read, and the problems of the others.
 *
 * @param rows - what {@link readTable} or a reader made of it gives
 * @example
 * ```ts
 * const columns = { width: { is: "length", names: ["width"], says: "width of the wall" } } as const;
 * const { values, problems } = await allRows(readTable("width\n40 ft\n8\n", columns));
 * values.length; // 1
 * problems[0].message; // 'rows[3].width (width of the wall): "8" has no unit; write a number and one of mil, in, ft, yd, um, mm'
 * ```
 */
export async function allRows<Value>(rows: AsyncIterable<TableRow<Value>>): Promise<{ readonly values: readonly Value[]; readonly problems: readonly Problem[] }> {
  const values: Value[] = [];
  const problems: Problem[] = [];
  for await (const one of rows) {
    if (one.ok) values.push(one.value);
    else problems.push(...one.problems);
  }
  return { values, problems };
}
