import { beginsLikeFormula } from "../workbook/styles.js";
import type { Table, TableCell } from "./table.js";

/** How a CSV is written. */
export interface CsvOptions {
  /** What stands between cells; a comma unless told, a semicolon where decimals have a comma. */
  readonly delimiter?: "," | ";" | "\t";
  /** Whether decimals have a comma. */
  readonly decimalComma?: boolean;
  /** Whether the file begins with the mark by which some programs know UTF-8. */
  readonly byteOrderMark?: boolean;
}

/**
 * Writes a table as CSV (RFC 4180). A text that begins like a formula gets an apostrophe before it, so that no program
 * runs it; numbers stand as they are.
 *
 * @param table - heads and rows
 * @param options - the marks between cells and in decimals
 * @example
 * ```ts
 * csvText({ heads: ["item", "packs"], rows: [["tape, wide", { number: "2.5" }]] }); // 'item,packs\r\n"tape, wide",2.5\r\n'
 * csvText({ heads: ["item"], rows: [["=1+1"]] }); // "item\r\n'=1+1\r\n"
 * ```
 */
export function csvText(table: Table, options: CsvOptions = {}): string {
  const { decimalComma = false, delimiter = decimalComma ? ";" : ",", byteOrderMark = false } = options;
  const cell = (value: TableCell): string => (typeof value === "object" ? quoted(decimalComma ? value.number.replace(".", ",") : value.number, delimiter) : quoted(harmless(value ?? ""), ""));
  return [...(byteOrderMark ? ["\uFEFF"] : []), ...[table.heads, ...table.rows].map((row) => `${row.map(cell).join(delimiter)}\r\n`)].join("");
}

function harmless(text: string): string {
  return beginsLikeFormula(text) ? `'${text}` : text;
}

/** In quotes where it holds what could be taken for the end of a cell, by whatever mark a program looks for. */
function quoted(text: string, delimiter: string): string {
  const holds = delimiter === "" ? /[",;\t\r\n]|^\s|\s$/.test(text) : text.includes(delimiter);
  return holds ? `"${text.replaceAll('"', '""')}"` : text;
}
