// Files of strangers: CSVs and workbooks of the examples with something wrong put into them, read to their end.
import { strToU8, type Zippable, zipSync } from "fflate";
import { readFileSync } from "node:fs";
import path from "node:path";
import { InputError } from "../../src/core/index.js";
import { readFilmReadings, readRows, readWalls, type TableRow } from "../../src/sheet/index.js";
import type { Draw } from "../support/random.js";
import { wrongIn } from "../support/broken-promises.js";
import { hostileText } from "./hostile.js";

const folder = path.resolve(process.env.FUZZ_EXAMPLES ?? path.join(import.meta.dirname, "../../examples"));
const csvs = ["walls.csv", "film-readings.csv"].map((file) => readFileSync(path.join(folder, file), "utf8").split("\n").slice(0, 12).join("\n")) as [string, ...string[]];
const cell = (place: string, text: string): string => `<c r="${place}" t="inlineStr"><is><t>${text}</t></is></c>`;
/** A workbook as small as one can be: texts in place and shared, numbers, a date, a formula. */
const parts: Readonly<Record<string, string>> = {
  "[Content_Types].xml": '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
  "xl/workbook.xml": '<workbook xmlns:r="r"><workbookPr date1904="0"/><sheets><sheet name="walls" sheetId="1" r:id="rId1"/></sheets></workbook>',
  "xl/_rels/workbook.xml.rels": '<Relationships><Relationship Id="rId1" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="styles" Target="styles.xml"/></Relationships>',
  "xl/sharedStrings.xml": "<sst><si><t>yard</t></si><si><r><t>9 ft </t></r><r><t>3-1/2 in</t></r></si></sst>",
  "xl/styles.xml": '<styleSheet><numFmts><numFmt numFmtId="164" formatCode="yyyy-mm-dd"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="164"/></cellXfs></styleSheet>',
  "xl/worksheets/sheet1.xml": `<worksheet><sheetData><row r="1">${cell("A1", "wall")}${cell("B1", "width (ft)")}${cell("C1", "height")}</row><row r="2">${cell("A2", "lake side")}<c r="B2"><v>36</v></c>${cell("C2", "9 ft")}</row><row r="4"><c r="A4" t="s"><v>0</v></c><c r="B4"><f>B2-14</f><v>22</v></c><c r="C4" t="s"><v>1</v></c></row><row r="5"><c r="A5" s="1"><v>46174</v></c><c r="B5" t="e"><v>#N/A</v></c></row></sheetData></worksheet>`,
};
const marks = ['"', '""', '","', '"\n', ",", ";", "\t", "\n", "\r", "\r\n", "\uFEFF", "\u0000", "=", "'", " ", "\ud800"] as const;
const tags = ["<", ">", "&", "&#0;", "&#x1F600;", "&lt;", "<!--", "-->", "<![CDATA[", "<!DOCTYPE x [<!ENTITY a \"b\">]>", "<c>", "</c>", "<row r=\"9\">", "r=\"A1048577\"", "t=\"s\"", "1e999"] as const;

/** A text with pieces put in, taken out or said twice, at places that are drawn. */
function spoilt(text: string, pieces: readonly [string, ...string[]], draw: Draw): string {
  let out = text;
  for (let times = draw.whole(1, 6); times > 0; times -= 1) {
    const [at, long] = [draw.whole(0, out.length), draw.whole(0, 40)];
    out = draw.one<() => string>([
      () => out.slice(0, at) + draw.one(pieces) + out.slice(at),
      () => out.slice(0, at) + draw.one(pieces) + out.slice(at),
      () => out.slice(0, at) + hostileText(draw) + out.slice(at),
      () => out.slice(0, at) + out.slice(at + long),
      () => out.slice(0, at + long) + out.slice(at),
    ])();
  }
  return out;
}

/** A workbook of which one part is spoilt, or its bytes. */
function spoiltWorkbook(draw: Draw): Uint8Array {
  const names = Object.keys(parts) as [string, ...string[]];
  const name = draw.one(names);
  const own: Zippable = Object.fromEntries(Object.entries(parts).map(([part, text]) => [part, strToU8(text)]));
  if (draw.whole(1, 3) > 1) own[name] = strToU8(spoilt(parts[name] ?? "", tags, draw));
  else if (draw.whole(1, 4) === 1) Reflect.deleteProperty(own, name);
  const bytes = zipSync(own);
  for (let times = draw.one([0, 0, 1, 4, 30]); times > 0; times -= 1) bytes[draw.whole(4, bytes.length - 1)] = draw.whole(0, 255);
  return draw.whole(1, 10) === 1 ? bytes.slice(0, draw.whole(0, bytes.length)) : bytes;
}

/** What was read, and what was not as promised. */
export interface SheetOutcome {
  readonly input: unknown;
  readonly answered: boolean;
  readonly broken: readonly string[];
}

/** Reads one spoilt file, whole or in pieces, as plain rows or as a table of the trade. */
export async function readSpoilt(draw: Draw): Promise<SheetOutcome> {
  const text = draw.one(csvs);
  const input = draw.whole(1, 3) === 1 ? spoiltWorkbook(draw) : draw.one<() => string | Uint8Array>([() => spoilt(text, marks, draw), () => strToU8(spoilt(text, marks, draw))])();
  const size = draw.one([1, 7, 100, 1 << 20]);
  const pieces = Array.from({ length: Math.ceil(input.length / size) }, (_, piece) => input.slice(piece * size, (piece + 1) * size));
  const source = draw.whole(0, 1) === 0 ? input : pieces;
  const read = draw.one<() => AsyncIterable<TableRow<unknown> | { readonly row: number; readonly ok: true; readonly cells: unknown }>>([() => readRows(source), () => readWalls(source), () => readFilmReadings(source)]);
  const broken: string[] = [];
  let [answered, last] = [false, 1];
  try {
    for await (const one of read()) {
      answered ||= one.ok;
      if (one.row <= last) broken.push(`row ${String(one.row)} after row ${String(last)}`);
      last = one.row;
      broken.push(...(one.ok ? [] : one.problems.length === 0 ? ["a row refused without a problem"] : one.problems.flatMap(({ message }) => (message.length > 2000 ? ["a message of more than 2000 letters"] : []))));
      // A text of the file may say anything.
      if (one.ok) broken.push(...wrongIn("cells" in one ? one.cells : one.value, "row").filter((what) => !what.includes(" says ")));
    }
  } catch (error) {
    if (!(error instanceof InputError)) broken.push(`threw ${String(error)}`);
    else if (error.message.length > 60_000) broken.push("an error of more than 60000 letters");
  }
  return { input, answered, broken };
}
