import type { Words } from "../../core/wording.js";
import { quotedRow } from "./quoted-row.js";
import { type Delimiter, longestRow, mostColumns, parsed, type RawRow, refuse, trouble } from "./raw-row.js";
import { say } from "./refusals.js";

/** The rows of a CSV, as far as its text has come; only what has not ended is kept. */
export async function* csvRows(pieces: AsyncIterable<string>, told: Delimiter | undefined): AsyncGenerator<RawRow, void, undefined> {
  let waiting = "";
  let row = 1;
  let columns = 0;
  let delimiter = told;
  const next = (texts: readonly string[], fault?: Words): RawRow => {
    if (texts.slice(mostColumns).some((text) => text.trim() !== "")) refuse(trouble(["rows", row], "", say("tooManyColumns", { most: mostColumns })));
    if (row === 1) columns = texts.length;
    const cells = texts.slice(0, mostColumns).map((text) => (text.trim() === "" ? undefined : { text: text.trim() }));
    const read = { row, cells, ...(fault === undefined ? {} : { fault: trouble(["rows", row], "", fault) }) };
    row += 1;
    return read;
  };
  const rows = function* (isLast: boolean): Generator<RawRow> {
    delimiter ??= delimiterOf(waiting);
    for (let quote = waiting.indexOf('"'); waiting !== ""; quote = waiting.indexOf('"')) {
      // Lines without a quote are rows as they stand.
      const end = quote >= 0 ? waiting.lastIndexOf("\n", quote) + 1 : isLast ? waiting.length : waiting.lastIndexOf("\n") + 1;
      const { data } = parsed(waiting.slice(0, end), delimiter);
      for (const texts of waiting[end - 1] === "\n" ? data.slice(0, -1) : data) yield next(texts);
      waiting = waiting.slice(end);
      const found = quote < 0 ? undefined : quotedRow(waiting, delimiter, columns, isLast);
      if (found === undefined) break;
      yield next(found.texts, found.fault);
      waiting = waiting.slice(found.length);
    }
    if (waiting.length > longestRow) refuse(trouble(["rows", row], "", say("rowTooLong", { most: longestRow })));
  };
  for await (const piece of pieces) {
    waiting += piece;
    if (piece.includes("\n") || waiting.length > longestRow) yield* rows(false);
  }
  yield* rows(true);
}

/** The mark between cells: the one that makes most names of the first row. */
function delimiterOf(text: string): Delimiter {
  const names = (delimiter: Delimiter): number => parsed(text.slice(0, longestRow), delimiter, 1).data[0]?.length ?? 0;
  const marks = [";", "\t"] as const;
  return marks.reduce<Delimiter>((best, mark) => (names(mark) > names(best) ? mark : best), ",");
}
