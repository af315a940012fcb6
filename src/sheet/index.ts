/**
 * Sheets: the rows of a CSV file.
 *
 * @packageDocumentation
 */
export { readRows, type RowSource, type SheetRow } from "./read-rows.js";
