import type { Words } from "../../core/wording.js";
import { type Delimiter, longestRow, parsed } from "./raw-row.js";
import { say } from "./refusals.js";

/** More lines than stand in one cell; a quote that is still open after them is a slip. */
const mostLines = 100;

/** A row with quotes in it, at the start of a text, and how much of the text it takes. */
export interface QuotedRow {
  readonly texts: readonly string[];
  readonly length: number;
  /** What is wrong with its quotes. The row then is its first line, and the lines after it are rows of their own. */
  readonly fault?: Words;
}

/**
 * Reads the row at the start of a text, where it has quotes; nothing, where its end has not come yet. A cell within quotes
 * may hold line ends. A quote that was put there by mistake would take the rows after it along, up to the next quote, so
 * lines that each fill the columns are rows, whatever the quotes say.
 *
 * @param columns - how many columns the sheet has; 0 where that is not known
 */
export function quotedRow(text: string, delimiter: Delimiter, columns: number, isLast: boolean): QuotedRow | undefined {
  const end = lineEnd(text, 0);
  if (end === undefined && !isLast) return undefined;
  const line = text.slice(0, end);
  const alone = parsed(line, delimiter, 1);
  const texts = alone.data[0] ?? [];
  if (!alone.errors.some(isOpen)) return { texts, length: line.length, ...(alone.errors.some(isQuote) ? { fault: say("quoteWithinText") } : {}) };
  const open = { texts, length: line.length, fault: say("quoteDoesNotEnd") };
  const lines = linesOf(isLast ? text : text.slice(0, text.lastIndexOf("\n") + 1));
  const { data, errors, meta } = parsed(lines.text, delimiter, 1);
  const quotes = errors.filter(isQuote);
  if (quotes.length > 0) return quotes.every(isOpen) && !lines.areAll && !isLast && text.length <= longestRow ? undefined : open;
  const cells = data[0] ?? [];
  return areRows(lines.text.slice(0, meta.cursor), cells.length, delimiter, columns) ? open : { texts: cells, length: meta.cursor };
}

const isQuote = ({ type }: { readonly type: string }): boolean => type === "Quotes";
const isOpen = ({ code }: { readonly code: string }): boolean => code === "MissingQuotes";

function lineEnd(text: string, from: number): number | undefined {
  const at = text.indexOf("\n", from);
  return at < 0 ? undefined : at + 1;
}

/** As many whole lines as one cell may hold, or all that there are. */
function linesOf(text: string): { readonly text: string; readonly areAll: boolean } {
  let end: number | undefined = 0;
  for (let count = 0; count < mostLines; count += 1) {
    end = lineEnd(text, end);
    if (end === undefined) return { text, areAll: false };
  }
  return { text: text.slice(0, end), areAll: true };
}

/**
 * Whether a row of several lines is several rows: each line, taken by itself, fills the columns. Lines of prose may do
 * that too, where there are two columns and each line has its one comma; there a blank follows it.
 */
function areRows(text: string, cells: number, delimiter: Delimiter, columns: number): boolean {
  const lines = text.replace(/\n$/, "").split("\n");
  const isFilled = columns > 1 && lines.every((line) => line.split(delimiter).length === columns);
  return isFilled && (cells !== columns || columns > 2 || !text.includes(`${delimiter} `));
}
