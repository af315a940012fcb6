import { type Problem, shown } from "../../core/problems.js";
import { type FileOptions, type RawCell, type RawRow, refuse, type RowSource, trouble } from "./raw-row.js";
import { rawRows } from "./raw-rows.js";
import { say } from "./refusals.js";

/**
 * One row below the header, with its number as a spreadsheet counts: the header is row 1. `cells` is what stands in it by
 * the names of the header, without blanks around; a cell that is empty is left out.
 */
export type SheetRow =
  | { readonly row: number; readonly ok: true; readonly cells: Readonly<Record<string, string>> }
  | { readonly row: number; readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Reads the rows of a sheet one after the other, under the names in its first row: a CSV with commas, semicolons or tabs
 * between cells and quotes as spreadsheets write them, or a workbook (.xlsx). Rows that are empty are passed over. A
 * row that cannot be read, for a stray quote or more cells than names, says why, and the others go on. A CSV may be of
 * any size: no more than a row of it is kept.
 *
 * @param source - the text or the bytes, or a stream of them
 * @param options - what stands between cells; which sheet of a workbook
 * @returns the rows as an async generator
 * @throws InputError for what is no sheet, or a header with a name that is missing or there twice
 * @example
 * ```ts
 * const { value } = await readRows("at,temperature\n2026-06-01T08:00,52 degF\n").next();
 * value.row; // 2
 * value.ok; // true
 * value.cells; // { at: "2026-06-01T08:00", temperature: "52 degF" }
 * ```
 */
export async function* readRows(source: RowSource, options: FileOptions = {}): AsyncGenerator<SheetRow, void, undefined> {
  let names: readonly string[] | undefined;
  for await (const { row, cells, fault } of headedRows(source, options)) {
    if (names === undefined) {
      names = cells.map((cell) => cell?.text ?? "");
      continue;
    }
    if (fault !== undefined) {
      yield Object.freeze({ row, ok: false, problems: Object.freeze([fault]) });
      continue;
    }
    const found = names.flatMap((name, column): [string, string][] => (cells[column] === undefined ? [] : [[name, cells[column].text]]));
    yield Object.freeze({ row, ok: true, cells: Object.freeze(Object.fromEntries(found)) });
  }
}

/** The header and the rows below it that are not empty; the header's columns have names, each its own. */
export async function* headedRows(source: RowSource, options: FileOptions): AsyncGenerator<RawRow, void, undefined> {
  let columns: number | undefined;
  for await (const raw of rawRows(source, options)) {
    if (columns === undefined) {
      // Columns without a name at the end are no columns.
      const header = raw.cells.slice(0, raw.cells.map((cell) => cell !== undefined).lastIndexOf(true) + 1);
      refuse(...(raw.fault === undefined ? [] : [raw.fault]), ...headerTroubles(header));
      columns = header.length;
      yield { row: raw.row, cells: header };
      continue;
    }
    if (raw.fault === undefined && raw.cells.every((cell) => cell === undefined)) continue;
    const beyond = raw.cells.slice(columns).find((cell) => cell !== undefined);
    const fault = beyond === undefined ? undefined : trouble(["rows", raw.row], shown(beyond.text), say("beyondNamedColumns", { count: columns }));
    yield raw.fault === undefined && fault !== undefined ? { ...raw, fault } : raw;
  }
  if (columns === undefined) refuse(...headerTroubles([]));
}

function headerTroubles(header: readonly (RawCell | undefined)[]): readonly Problem[] {
  if (header.length === 0) return [trouble(["rows", 1], "", say("firstRowEmpty"))];
  const seen = new Set<string>();
  return header.flatMap((cell, index) => {
    if (cell === undefined) return [trouble(["rows", 1], say("columnNumber", { column: index + 1 }), say("hasNoName"))];
    if (seen.has(cell.text)) return [trouble(["rows", 1], shown(cell.text), say("standsTwice"))];
    seen.add(cell.text);
    return [];
  });
}
