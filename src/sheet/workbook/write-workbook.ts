import { strToU8, zipSync } from "fflate";
import { fullAddress, type Page } from "./page.js";
import { sheetXml } from "./sheet-part.js";
import { Styles } from "./styles.js";
import { declaration, escaped } from "./xml.js";

const spreadsheet = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packaged = "http://schemas.openxmlformats.org/package/2006";
const kinds = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/**
 * Writes sheets as the bytes of a workbook (.xlsx), by the parts that ECMA-376 names. The same sheets give the same
 * bytes: there is no date in it, and every file in it has the earliest time that a zip can tell.
 */
export function writeWorkbook(pages: readonly Page[]): Uint8Array {
  const styles = new Styles();
  const numbered = pages.map((page, index) => ({ page, file: `worksheets/sheet${String(index + 1)}.xml`, id: `rId${String(index + 1)}` }));
  const sheets = numbered.map(({ page, file }, index) => [`xl/${file}`, sheetXml(page, styles, index === 0)] as const);
  const stylesId = `rId${String(pages.length + 1)}`;
  const files: readonly (readonly [string, string])[] = [
    ["[Content_Types].xml", contentTypes(numbered.map(({ file }) => file))],
    ["_rels/.rels", relationships([["rId1", "officeDocument", "xl/workbook.xml"]])],
    ["xl/workbook.xml", workbookXml(numbered)],
    ["xl/_rels/workbook.xml.rels", relationships([...numbered.map(({ id, file }) => [id, "worksheet", file] as const), [stylesId, "styles", "styles.xml"]])],
    ["xl/styles.xml", styles.xml()],
    ...sheets,
  ];
  // The clock of a zip is local, and so is this: it comes out as the same time everywhere.
  return zipSync(Object.fromEntries(files.map(([name, text]) => [name, strToU8(text)])), { mtime: new Date(1980, 0, 1), level: 6 });
}

function contentTypes(sheets: readonly string[]): string {
  const parts = [...sheets.map((file) => [`/xl/${file}`, "worksheet"]), ["/xl/styles.xml", "styles"], ["/xl/workbook.xml", "sheet.main"]];
  return [
    `${declaration}<Types xmlns="${packaged}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>`,
    '<Default Extension="xml" ContentType="application/xml"/>',
    ...parts.map(([name = "", kind = ""]) => `<Override PartName="${name}" ContentType="${kinds}.${kind}+xml"/>`),
    "</Types>",
  ].join("");
}

function relationships(rows: readonly (readonly [id: string, kind: string, target: string])[]): string {
  const all = rows.map(([id, kind, target]) => `<Relationship Id="${id}" Type="${relations}/${kind}" Target="${target}"/>`);
  return `${declaration}<Relationships xmlns="${packaged}/relationships">${all.join("")}</Relationships>`;
}

function workbookXml(numbered: readonly { readonly page: Page; readonly id: string }[]): string {
  const sheets = numbered.map(({ page, id }, index) => `<sheet name="${escaped(page.title)}" sheetId="${String(index + 1)}" r:id="${id}"/>`);
  return [
    `${declaration}<workbook xmlns="${spreadsheet}" xmlns:r="${relations}"><bookViews><workbookView activeTab="0"/></bookViews><sheets>${sheets.join("")}</sheets>`,
    definedNames(numbered.map(({ page }) => page)),
    // Whatever stands beside the formulas, a program works them out anew when it opens the file.
    '<calcPr calcId="191029" fullCalcOnLoad="1"/></workbook>',
  ].join("");
}

/** The names of cells, and the rows that are printed on every page; in the order of the alphabet, as programs write them. */
function definedNames(pages: readonly Page[]): string {
  const named = pages.flatMap(({ title, rows }) =>
    rows.flatMap((row, index) => row.flatMap((cell, column) => (cell?.name === undefined ? [] : [{ name: cell.name, local: "", to: fullAddress(title, column + 1, index + 1) }]))),
  );
  const titles = pages.flatMap(({ title, heads }, index) =>
    heads === 0 ? [] : [{ name: "_xlnm.Print_Titles", local: ` localSheetId="${String(index)}"`, to: `'${title.replaceAll("'", "''")}'!$1:$${String(heads)}` }],
  );
  const key = (name: string): string => name.toLowerCase();
  const all = [...named, ...titles].sort((a, b) => (key(a.name) < key(b.name) ? -1 : key(a.name) > key(b.name) ? 1 : 0));
  return all.length === 0 ? "" : `<definedNames>${all.map(({ name, local, to }) => `<definedName name="${name}"${local}>${escaped(to)}</definedName>`).join("")}</definedNames>`;
}
