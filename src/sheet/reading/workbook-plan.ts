import { isDateFormat } from "./dates.js";
import { refuse, trouble } from "./raw-row.js";
import { say } from "./refusals.js";
import { unpacked } from "./unzip.js";
import { type Listener, xmlReader } from "./xml-reader.js";

/** What has to be known of a workbook before one of its sheets is read. */
export interface WorkbookPlan {
  /** The file of the sheet in the zip. */
  readonly part: string;
  readonly texts: readonly string[];
  /** Whether a style shows its number as a day or a time. */
  readonly isDate: (style: number) => boolean;
  readonly since1904: boolean;
}

/** The letters that the texts of a workbook may have together: they are held while a sheet is read. */
const mostLetters = 64 * 1024 * 1024;

/** Reads all of a workbook that is needed but the sheet itself. */
export function workbookPlan(zip: Uint8Array, wanted: string | undefined): WorkbookPlan {
  const sheets: { readonly title: string; readonly id: string }[] = [];
  const targets = new Map<string, string>();
  const texts: string[] = [];
  const formats = new Map<number, string>();
  const styles: number[] = [];
  let since1904 = false;
  const listeners: Readonly<Record<string, Listener>> = {
    "xl/workbook.xml": {
      begin(name, { name: title = "", date1904, ...rest }) {
        if (name === "sheet") sheets.push({ title, id: rest["r:id"] ?? Object.entries(rest).find(([key]) => key.endsWith(":id"))?.[1] ?? "" });
        if (name === "workbookPr") since1904 = date1904 === "1" || date1904 === "true";
      },
    },
    "xl/_rels/workbook.xml.rels": {
      begin(name, { Id = "", Target = "" }) {
        if (name === "Relationship") targets.set(Id, Target.startsWith("/") ? Target.slice(1) : `xl/${Target}`);
      },
    },
    "xl/sharedStrings.xml": sharedTexts(texts),
    "xl/styles.xml": cellStyles(formats, styles),
  };
  const steps = unpacked(zip, (name) => {
    const listener = Object.hasOwn(listeners, name) ? listeners[name] : undefined;
    return listener && xmlReader(name, listener);
  });
  while (steps.next().done !== true);
  if (sheets.length === 0) refuse(trouble([], "", say("zipButNoWorkbook")));
  const sheet = wanted === undefined ? sheets[0] : sheets.find(({ title }) => title === wanted);
  if (sheet === undefined) refuse(trouble([], `"${wanted ?? ""}"`, say("noSuchSheet", { sheets: sheets.map(({ title }) => title) })));
  return { part: targets.get(sheet?.id ?? "") ?? "", texts, isDate: (style) => isDateFormat(styles[style] ?? 0, formats.get(styles[style] ?? 0)), since1904 };
}

/** The texts that cells share; a reading aid beside one is no part of it. */
function sharedTexts(texts: string[]): Listener {
  let text = "";
  let letters = 0;
  let aside = false;
  return {
    begin(name) {
      if (name === "si") text = "";
      if (name === "rPh") aside = true;
    },
    end(name, found) {
      if (name === "rPh") aside = false;
      if (name === "t" && !aside) text += found;
      if (name !== "si") return;
      texts.push(text);
      letters += text.length + 16;
      if (letters > mostLetters) refuse(trouble([], "", say("textsTooLong")));
    },
  };
}

/** The number format of each style of a cell, and how the formats are written. */
function cellStyles(formats: Map<number, string>, styles: number[]): Listener {
  let ofCells = false;
  return {
    begin(name, { numFmtId = "0", formatCode = "" }) {
      if (name === "numFmt") formats.set(Number(numFmtId), formatCode);
      if (name === "cellXfs") ofCells = true;
      if (name === "xf" && ofCells) styles.push(Number(numFmtId));
    },
    end(name) {
      if (name === "cellXfs") ofCells = false;
    },
  };
}
