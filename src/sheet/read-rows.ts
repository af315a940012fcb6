import Papa from "papaparse";
import { InputError, type Path, type Problem, problem, shown } from "../core/problems.js";

/** What a sheet is read from: its text, or a stream of texts or of bytes in UTF-8, such as an open file. */
export type RowSource = string | AsyncIterable<string | Uint8Array> | Iterable<string | Uint8Array>;

/** One row below the header. */
export interface SheetRow {
  /** Its number as a spreadsheet counts: the header is row 1. */
  readonly row: number;
  /** What stands in it by the names of the header, without blanks around; a cell that is empty is left out. */
  readonly cells: Readonly<Record<string, string>>;
}

/**
 * Reads the rows of a CSV sheet one after the other, under the names in its first row: commas, semicolons or tabs between
 * cells, quotes as spreadsheets write them. Rows that are empty are passed over.
 *
 * @param source - the text, or a stream
 * @returns the rows as an async generator
 * @throws InputError for a header with a name that is missing or there twice, more cells than names, a quote that does not end
 * @example
 * ```ts
 * const { value } = await readRows("at,temperature\n2026-06-01T08:00,52 degF\n").next();
 * value.row; // 2
 * value.cells; // { at: "2026-06-01T08:00", temperature: "52 degF" }
 * ```
 */
export async function* readRows(source: RowSource): AsyncGenerator<SheetRow, void, undefined> {
  const text = await textOf(source);
  const { data, errors } = Papa.parse(text, { delimiter: delimiterOf(text) });
  const [header = [], ...rest] = data;
  const names = namesOf(header);
  refuse([...errors.filter(({ type }) => type === "Quotes").map(({ row = 0 }) => trouble(["rows", row + 1], "", "a quote in it does not end")), ...headerTroubles(names)]);
  for (const [index, row] of rest.entries()) {
    const texts = row.map((text) => text.trim());
    if (texts.every((text) => text === "")) continue;
    const beyond = texts.slice(names.length).find((text) => text !== "");
    if (beyond !== undefined) refuse([trouble(["rows", index + 2], shown(beyond), `it stands beyond the ${String(names.length)} columns that have a name; is there a comma within a cell?`)]);
    const cells = names.flatMap((name, column): [string, string][] => (texts[column] === undefined || texts[column] === "" ? [] : [[name, texts[column]]]));
    yield Object.freeze({ row: index + 2, cells: Object.freeze(Object.fromEntries(cells)) });
  }
}

/** The mark between cells: the one that makes most names of the first row. */
function delimiterOf(text: string): string {
  const names = (delimiter: string): number => Papa.parse(text, { delimiter, preview: 1 }).data[0]?.length ?? 0;
  return [";", "\t"].reduce((best, mark) => (names(mark) > names(best) ? mark : best), ",");
}

/** The names of the columns; columns without one at the end are no columns. */
function namesOf(header: readonly string[]): readonly string[] {
  const names = header.map((name) => name.trim());
  return names.slice(0, names.map((name) => name !== "").lastIndexOf(true) + 1);
}

function headerTroubles(names: readonly string[]): readonly Problem[] {
  if (names.length === 0) return [trouble(["rows", 1], "", "the first row has the names of the columns; it is empty")];
  return names.flatMap((name, index) => {
    if (name === "") return [trouble(["rows", 1], `column ${String(index + 1)}`, "it has no name")];
    return names.indexOf(name) === index ? [] : [trouble(["rows", 1], shown(name), "it stands there twice")];
  });
}

function trouble(path: Path, given: string, wanted: string): Problem {
  return problem({ code: "refused", path, given, wanted });
}

function refuse(problems: readonly Problem[]): void {
  if (problems.length > 0) throw new InputError("sheet.read-rows", problems);
}

/** All of a source as text. */
async function textOf(source: RowSource): Promise<string> {
  if (typeof source === "string") return source;
  const decoder = new TextDecoder("utf-8", { fatal: true });
  const parts: string[] = [];
  for await (const part of source) parts.push(typeof part === "string" ? part : decoded(decoder, part));
  return parts.join("") + decoded(decoder);
}

/** Bytes as text, the end of the bytes where there are none. */
function decoded(decoder: InstanceType<typeof TextDecoder>, bytes?: Uint8Array): string {
  try {
    return bytes === undefined ? decoder.decode() : decoder.decode(bytes, { stream: true });
  } catch {
    throw new InputError("sheet.read-rows", [trouble([], "", "the file is no text in UTF-8; save it so")]);
  }
}
