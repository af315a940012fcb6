import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/index.js";
import { readRows, type RowSource, type SheetRow } from "../../src/sheet/index.js";

async function all(source: RowSource): Promise<readonly SheetRow[]> {
  const rows: SheetRow[] = [];
  for await (const row of readRows(source)) rows.push(row);
  return rows;
}

async function problemsOf(source: RowSource): Promise<readonly (readonly [string, string])[]> {
  try {
    await all(source);
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ path, message }) => [path.join("."), message]);
    throw error;
  }
  return [];
}

describe("rows of a sheet", () => {
  it("stand under the names of the header, with the number a spreadsheet shows", async () => {
    expect(await all("at, temperature\r\n2026-06-01T08:00, 52 degF\r\n\r\n2026-06-01T09:00,\r\n")).toEqual([
      { row: 2, cells: { at: "2026-06-01T08:00", temperature: "52 degF" } },
      { row: 4, cells: { at: "2026-06-01T09:00" } },
    ]);
  });

  it("keep commas, quotes and line ends within quotes", async () => {
    const [row] = await all('name,height\n"west, by the ""gate""\nand the drive","8 ft 6 in"\n');
    expect(row?.cells).toEqual({ name: 'west, by the "gate"\nand the drive', height: "8 ft 6 in" });
  });

  it("may have semicolons or tabs, and a mark of the byte order", async () => {
    for (const mark of [";", "\t", ","]) expect(await all(`\uFEFFa${mark}b\n1${mark}2\n`)).toEqual([{ row: 2, cells: { a: "1", b: "2" } }]);
  });

  it("come from a stream of bytes that is cut anywhere", async () => {
    const bytes = new TextEncoder().encode("name,temperature\nMörtel,20 °C\n");
    const pieces = Array.from(bytes, (byte) => Uint8Array.of(byte));
    expect(await all(pieces)).toEqual([{ row: 2, cells: { name: "Mörtel", temperature: "20 °C" } }]);
  });

  it("of one column", async () => {
    expect(await all("height\n8 ft\n9 ft\n")).toEqual([{ row: 2, cells: { height: "8 ft" } }, { row: 3, cells: { height: "9 ft" } }]);
  });

  it("pass over empty columns at the end and empty rows", async () => {
    expect(await all("a,b,,\n1,2,,\n,,,\n3,4,,\n")).toEqual([{ row: 2, cells: { a: "1", b: "2" } }, { row: 4, cells: { a: "3", b: "4" } }]);
  });

  it("a header alone has no rows", async () => {
    expect(await all("a,b\n")).toEqual([]);
  });

  it("a name of the language's own is a name like any other", async () => {
    const [row] = await all("__proto__,constructor\n1,2\n");
    expect(Object.entries(row?.cells ?? {})).toEqual([["__proto__", "1"], ["constructor", "2"]]);
  });
});

describe("a sheet that cannot be read", () => {
  it.each([
    ["nothing at all", "", [["rows.1", "rows[1]: the first row has the names of the columns; it is empty"]]],
    ["a name that is missing", "a,,c\n1,2,3\n", [["rows.1", "rows[1]: column 2: it has no name"]]],
    ["a name that stands twice", "a,b,a\n1,2,3\n", [["rows.1", 'rows[1]: "a": it stands there twice']]],
    ["more cells than names", "a,b\n1,2\n1,250,3\n", [["rows.3", 'rows[3]: "3": it stands beyond the 2 columns that have a name; is there a comma within a cell?']]],
    ["a quote that does not end", 'a,b\n1,2\n"3,4\n', [["rows.3", "rows[3]: a quote in it does not end"]]],
  ])("has %s", async (_what, text, wanted) => {
    expect(await problemsOf(text)).toEqual(wanted);
  });

  it("is not in UTF-8", async () => {
    expect(await problemsOf([Uint8Array.of(0x61, 0x0a, 0xe9, 0x0a)])).toEqual([["", "input: the file is no text in UTF-8; save it so"]]);
  });
});
