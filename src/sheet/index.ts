/**
 * Sheets: rows from a CSV or a workbook, and tables, CSV and workbooks with live formulas out of what was worked out.
 *
 * @packageDocumentation
 */
export type { OrderList, SheetCost, SheetLine, SheetPrice } from "./order-list.js";
export { orderWorkbook } from "./order-workbook.js";
export type { Column, Columns, RowOf } from "./reading/columns.js";
export type { Headings } from "./reading/header.js";
export type { FileOptions, RowSource } from "./reading/raw-row.js";
export { readRows, type SheetRow } from "./reading/read-rows.js";
export { allRows, readTable, type TableOptions, type TableRow } from "./reading/read-table.js";
export {
  filmReadingColumns, openingColumns, priceColumns, readFilmReadings, readOpenings, readPrices, readTemperatures, readWalls, temperatureColumns,
  wallColumns,
} from "./reading/trade-sheets.js";
export { csvText, type CsvOptions } from "./tables/csv.js";
export { batchTable, type BatchItem, orderTable, stepsTable } from "./tables/solution-tables.js";
export { recordTable, type Table, type TableCell } from "./tables/table.js";
export { workbook, type WorkbookOptions } from "./workbook.js";
export { spreadsheetFormula } from "./workbook/spreadsheet-formula.js";
