import Papa from "papaparse";
import { longestRow, mostColumns, type RawRow, refuse, trouble } from "./raw-row.js";

type Delimiter = "," | ";" | "\t";

/** The rows of a CSV, as far as its text has come; only the row that has not ended is kept. */
export async function* csvRows(pieces: AsyncIterable<string>, told: Delimiter | undefined): AsyncGenerator<RawRow, void, undefined> {
  let waiting = "";
  let row = 1;
  let delimiter = told;
  const rows = function* (isLast: boolean): Generator<RawRow> {
    delimiter ??= delimiterOf(waiting);
    const { data, errors, meta } = new Papa.Parser({ delimiter, newline: "\n" }).parse(waiting, 0, !isLast);
    const broken = new Set(errors.filter(({ type }) => type === "Quotes").map((error) => error.row ?? 0));
    // After the last line end there is no row.
    const whole = isLast && data.at(-1)?.join("") === "" ? data.slice(0, -1) : data;
    for (const [index, texts] of whole.entries()) {
      const fault = broken.has(index) ? { fault: trouble(["rows", row], "", "a quote in it does not end") } : {};
      if (texts.length > mostColumns && texts.slice(mostColumns).some((text) => text.trim() !== "")) refuse(trouble(["rows", row], "", `it has more than ${String(mostColumns)} columns; is this a CSV?`));
      yield { row, cells: texts.slice(0, mostColumns).map((text) => (text.trim() === "" ? undefined : { text: text.trim() })), ...fault };
      row += 1;
    }
    waiting = isLast ? "" : waiting.slice(meta.cursor);
    if (waiting.length > longestRow) refuse(trouble(["rows", row], "", `it is longer than ${String(longestRow)} letters; is there a quote that does not end?`));
  };
  for await (const piece of pieces) {
    waiting += piece;
    if (piece.includes("\n")) yield* rows(false);
    else if (waiting.length > longestRow) yield* rows(false);
  }
  yield* rows(true);
}

/** The mark between cells: the one that makes most names of the first row. */
function delimiterOf(text: string): Delimiter {
  const names = (delimiter: Delimiter): number => new Papa.Parser({ delimiter, newline: "\n" }).parse(text.slice(0, longestRow), 0, false).data[0]?.length ?? 0;
  const marks = [";", "\t"] as const;
  return marks.reduce<Delimiter>((best, mark) => (names(mark) > names(best) ? mark : best), ",");
}
