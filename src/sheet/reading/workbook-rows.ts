import { dateText } from "./dates.js";
import { mostColumns, type RawCell, type RawRow, refuse, trouble } from "./raw-row.js";
import { say } from "./refusals.js";
import { bytesOf, unpacked } from "./unzip.js";
import { type WorkbookPlan, workbookPlan } from "./workbook-plan.js";
import { type Listener, xmlReader } from "./xml-reader.js";

/** The rows of one sheet of a workbook (.xlsx), read on the way. */
export async function* workbookRows(pieces: AsyncIterable<string | Uint8Array>, sheet: string | undefined): AsyncGenerator<RawRow, void, undefined> {
  const zip = await bytesOf(pieces);
  const plan = workbookPlan(zip, sheet);
  const ready: RawRow[] = [];
  const take = xmlReader(plan.part, sheetRows(plan, ready));
  const found: string[] = [];
  const steps = unpacked(zip, (name) => {
    if (name !== plan.part) return undefined;
    found.push(name);
    return take;
  });
  while (steps.next().done !== true) yield* ready.splice(0);
  if (found.length === 0) refuse(trouble([], plan.part, say("sheetNotInIt")));
  yield* ready.splice(0);
}

/** Puts the rows of a sheet into a list as they end; rows without cells are not written there. */
function sheetRows({ texts, isDate, since1904 }: WorkbookPlan, ready: RawRow[]): Listener {
  let row = 0;
  let column = 0;
  let kind = "n";
  let style = 0;
  let value: string | undefined;
  let cells: (RawCell | undefined)[] = [];
  let aside = false;

  const cellOf = (text: string): RawCell | undefined => {
    if (kind === "s") return textCell(texts[Number(text)] ?? "");
    if (kind === "b") return textCell(text === "1" ? "TRUE" : "FALSE");
    const number = Number(text);
    if (kind !== "n" || text.trim() === "" || !Number.isFinite(number)) return textCell(text);
    // A file has numbers with all digits of their binary form; the shortest text that is the same number is what was typed.
    return isDate(style) ? textCell(dateText(number, since1904)) : { text: String(number), isNumber: true };
  };

  return {
    begin(name, { r: at, t: type = "n", s: look = "0" }) {
      if (name === "row") {
        row = at === undefined ? row + 1 : Number(at);
        column = 0;
        cells = [];
      }
      if (name === "c") {
        column = at === undefined ? column + 1 : columnOf(at);
        if (!(column <= mostColumns)) refuse(trouble(["rows", row], at ?? "", say("sheetTooWide", { most: mostColumns })));
        kind = type;
        style = Number(look);
        value = undefined;
      }
      if (name === "rPh") aside = true;
    },
    end(name, text) {
      if (name === "rPh") aside = false;
      if (name === "v") value = text;
      if (name === "t" && !aside) value = (value ?? "") + text;
      if (name === "c" && value !== undefined) cells[column - 1] = cellOf(value);
      // A list with gaps would pass over them.
      if (name === "row") ready.push({ row, cells: Array.from(cells) });
    },
  };
}

function textCell(text: string): RawCell | undefined {
  const trimmed = text.trim();
  return trimmed === "" ? undefined : { text: trimmed };
}

/** `B4` as 2. */
function columnOf(at: string): number {
  return [.../^[A-Z]{1,4}/i.exec(at)?.[0].toUpperCase() ?? ""].reduce((number, letter) => number * 26 + letter.charCodeAt(0) - 64, 0);
}
