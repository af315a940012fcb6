import { address, type Cell, type Page, type Row } from "./page.js";
import type { Styles } from "./styles.js";
import { declaration, escaped } from "./xml.js";

const longestText = 32_767;

/** One sheet as its part of the workbook. */
export function sheetXml(page: Page, styles: Styles, isFirst: boolean): string {
  const { widths, rows, heads, fixedColumns = 0, landscape = false } = page;
  return [
    `${declaration}<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>`,
    `<sheetViews><sheetView showGridLines="0"${isFirst ? ' tabSelected="1"' : ""} workbookViewId="0">${frozen(heads, fixedColumns)}</sheetView></sheetViews>`,
    '<sheetFormatPr defaultRowHeight="15"/>',
    `<cols>${widths.map((width, index) => `<col min="${String(index + 1)}" max="${String(index + 1)}" width="${String(width)}" customWidth="1"/>`).join("")}</cols>`,
    `<sheetData>${rows.map((row, index) => rowXml(row, index + 1, widths, styles)).join("")}</sheetData>`,
    validations(page),
    '<pageMargins left="0.5" right="0.5" top="0.6" bottom="0.6" header="0.3" footer="0.3"/>',
    `<pageSetup orientation="${landscape ? "landscape" : "portrait"}" fitToWidth="1" fitToHeight="0"/>`,
    "<headerFooter><oddFooter>&amp;L&amp;A&amp;R&amp;P / &amp;N</oddFooter></headerFooter></worksheet>",
  ].join("");
}

function frozen(rows: number, columns: number): string {
  if (rows === 0 && columns === 0) return "";
  const [x, y] = [columns > 0 ? ` xSplit="${String(columns)}"` : "", rows > 0 ? ` ySplit="${String(rows)}"` : ""];
  const pane = columns > 0 && rows > 0 ? "bottomRight" : rows > 0 ? "bottomLeft" : "topRight";
  return `<pane${x}${y} topLeftCell="${address(columns + 1, rows + 1)}" activePane="${pane}" state="frozen"/><selection pane="${pane}"/>`;
}

function rowXml(row: Row, number: number, widths: readonly number[], styles: Styles): string {
  if (row.every((cell) => cell === undefined)) return "";
  const height = heightOf(row, widths);
  const told = height === lineHeight ? "" : ` ht="${String(height)}" customHeight="1"`;
  return `<row r="${String(number)}"${told}>${row.map((cell, index) => (cell === undefined ? "" : cellXml(cell, address(index + 1, number), styles))).join("")}</row>`;
}

const lineHeight = 15;

/** The height of a row, since not every program fits it to texts that take several lines. */
function heightOf(row: Row, widths: readonly number[]): number {
  if (row.some((cell) => cell?.use === "title")) return 27;
  const lines = row.map((cell, index) => {
    if (cell === undefined || typeof cell.value !== "string" || cell.use === "note" || cell.use === "group") return 1;
    // Small letters take less room; words are not cut, so that a line is never quite full.
    const letters = ((widths[index] ?? 10) - 1) * (cell.use === "text" || cell.use === "strong" ? 1 : 1.3);
    return cell.value.split("\n").reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / letters)), 0);
  });
  return lineHeight * Math.min(27, Math.max(...lines));
}

function cellXml(cell: Cell, at: string, styles: Styles): string {
  const { value, formula } = cell;
  const start = `<c r="${at}" s="${String(styles.styleOf(cell))}"`;
  if (formula !== undefined) {
    const found = value === undefined ? "" : `<v>${escaped(String(value))}</v>`;
    return `${start}${typeof value === "string" ? ' t="str"' : ""}><f>${escaped(formula)}</f>${found}</c>`;
  }
  if (value === undefined) return `${start}/>`;
  if (typeof value === "number") return `${start}><v>${String(value)}</v></c>`;
  if (value.length > longestText) throw new RangeError(`a cell of a workbook holds ${String(longestText)} letters at most; this text has ${String(value.length)}`);
  return `${start} t="inlineStr"><is><t xml:space="preserve">${escaped(value)}</t></is></c>`;
}

/** What the inputs must be: the program refuses anything else, and says what is wanted. */
function validations({ rows }: Page): string {
  const all = rows.flatMap((row, index) =>
    row.flatMap((cell, column) => {
      if (cell?.must === undefined) return [];
      const { formula, says } = cell.must;
      const words = `showInputMessage="1" showErrorMessage="1" error="${escaped(says.slice(0, 225))}" prompt="${escaped(says.slice(0, 255))}"`;
      return [`<dataValidation type="custom" allowBlank="0" ${words} sqref="${address(column + 1, index + 1)}"><formula1>${escaped(formula)}</formula1></dataValidation>`];
    }),
  );
  return all.length === 0 ? "" : `<dataValidations count="${String(all.length)}">${all.join("")}</dataValidations>`;
}
