import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/index.js";
import { drawFrom } from "../support/random.js";
import { readRows, type RowSource, type SheetRow } from "../../src/sheet/index.js";

async function all(source: RowSource): Promise<readonly SheetRow[]> {
  const rows: SheetRow[] = [];
  for await (const row of readRows(source)) rows.push(row);
  return rows;
}

async function problemsOf(source: RowSource): Promise<readonly (readonly [string, string])[]> {
  try {
    return (await all(source)).flatMap((row) => (row.ok ? [] : row.problems.map(({ path, message }): [string, string] => [path.join("."), message])));
  } catch (error) {
    if (error instanceof InputError) return error.problems.map(({ path, message }) => [path.join("."), message]);
    throw error;
  }
}

describe("rows of a sheet", () => {
  it("stand under the names of the header, with the number a spreadsheet shows", async () => {
    expect(await all("at, temperature\r\n2026-06-01T08:00, 52 degF\r\n\r\n2026-06-01T09:00,\r\n")).toEqual([
      { row: 2, ok: true, cells: { at: "2026-06-01T08:00", temperature: "52 degF" } },
      { row: 4, ok: true, cells: { at: "2026-06-01T09:00" } },
    ]);
  });

  it("keep commas, quotes and line ends within quotes", async () => {
    const [row] = await all('name,height\n"west, by the ""gate""\nand the drive","8 ft 6 in"\n');
    expect(row).toMatchObject({ cells: { name: 'west, by the "gate"\nand the drive', height: "8 ft 6 in" } });
  });

  it("may have semicolons or tabs, and a mark of the byte order", async () => {
    for (const mark of [";", "\t", ","]) expect(await all(`\uFEFFa${mark}b\n1${mark}2\n`)).toEqual([{ row: 2, ok: true, cells: { a: "1", b: "2" } }]);
  });

  it("come from a stream of bytes that is cut anywhere", async () => {
    const bytes = new TextEncoder().encode("name,temperature\nMörtel,20 °C\n");
    const pieces = Array.from(bytes, (byte) => Uint8Array.of(byte));
    expect(await all(pieces)).toEqual([{ row: 2, ok: true, cells: { name: "Mörtel", temperature: "20 °C" } }]);
  });

  it("of one column", async () => {
    expect(await all("height\n8 ft\n9 ft\n")).toEqual([{ row: 2, ok: true, cells: { height: "8 ft" } }, { row: 3, ok: true, cells: { height: "9 ft" } }]);
  });

  it("pass over empty columns at the end and empty rows", async () => {
    expect(await all("a,b,,\n1,2,,\n,,,\n3,4,,\n")).toEqual([{ row: 2, ok: true, cells: { a: "1", b: "2" } }, { row: 4, ok: true, cells: { a: "3", b: "4" } }]);
  });

  it("a header alone has no rows", async () => {
    expect(await all("a,b\n")).toEqual([]);
  });

  it("a name of the language's own is a name like any other", async () => {
    const [row] = await all("__proto__,constructor\n1,2\n");
    expect(Object.entries(row?.ok === true ? row.cells : {})).toEqual([["__proto__", "1"], ["constructor", "2"]]);
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

/** Each row as its cells, or as what is wrong with it. */
async function told(source: RowSource): Promise<readonly unknown[]> {
  return (await all(source)).map((row) => [row.row, row.ok ? Object.values(row.cells).join("|") : row.problems.map(({ message }) => message).join("; ")]);
}

const open = (row: number): readonly [number, string] => [row, `rows[${String(row)}]: a quote in it does not end`];

describe("a stray quote", () => {
  it("or several, wherever they stand below the header, cost no more rows than there are quotes", async () => {
    const draw = drawFrom(11);
    const rows = Array.from({ length: 30 }, (_, row) => [`wall ${String(row)}`, String(row), "9 ft", draw.one(["", "x", 'a "word"'])].join(","));
    const sound = await told(["a,b,c,d", ...rows].join("\n"));
    for (let job = 0; job < 400; job += 1) {
      const quotes = draw.whole(1, 3);
      let text = rows.join("\n");
      for (let quote = 0; quote < quotes; quote += 1) {
        const at = draw.one([draw.whole(0, text.length), text.indexOf(",", draw.whole(0, text.length - 9)) + 1, text.indexOf("\n", draw.whole(0, text.length)) + 1]);
        text = `${text.slice(0, at)}"${text.slice(at)}`;
      }
      const found = await told(`a,b,c,d\n${text}`);
      const lost = sound.filter((row) => !found.some((one) => JSON.stringify(one) === JSON.stringify(row)));
      expect([text, found.length, lost.length <= quotes]).toEqual([text, 30, true]);
    }
  });

  it("costs its own row and no other, wherever the next quote stands", async () => {
    expect(await told('a,b,c\n1,"2,3\n4,5,6\n7,8,9\n')).toEqual([open(2), [3, "4|5|6"], [4, "7|8|9"]]);
    expect(await told('a,b,c\n1,"2,3\n4,5,6\n7,8",9\n10,11,12\n')).toEqual([open(2), [3, "4|5|6"], [4, '7|8"|9'], [5, "10|11|12"]]);
    expect(await told('a,b,c\n1,"2,3\n4,5,6\n7,"8, 8",9\n10,11,12\n')).toEqual([open(2), [3, "4|5|6"], [4, "7|8, 8|9"], [5, "10|11|12"]]);
    expect(await told('a,b\n1,"2\n3,"4\n5,"6\n7,8\n')).toEqual([open(2), open(3), open(4), [5, "7|8"]]);
  });

  it("costs no other row where two columns hold times and readings", async () => {
    expect(await told('at,temperature\n08:00,"52 degF\n09:00,53 degF"\n10:00,54 degF\n')).toEqual([open(2), [3, '09:00|53 degF"'], [4, "10:00|54 degF"]]);
  });

  it("within a text in quotes is told with how to write it", async () => {
    expect(await told('a,b\n"12" board",2\n3,4\n')).toEqual([[2, 'rows[2]: a quote stands within a text in quotes; write it twice there, as ""'], [3, "3|4"]]);
  });

  it("is no quote of a text where it stands for inches", async () => {
    expect(await told('a,b\n12" board,2\n3,4"\n')).toEqual([[2, '12" board|2'], [3, '3|4"']]);
  });

  it("is told the same however the text is cut", async () => {
    const text = 'a,b,c\r\n"x\ny, z",1,2\r\n1,"2,3\r\n4,5,6\r\n"7 ""a""","8, 8",9\r\n10,11,12';
    const whole = [[2, "x\ny, z|1|2"], open(3), [4, "4|5|6"], [5, '7 "a"|8, 8|9'], [6, "10|11|12"]];
    expect(await told(text)).toEqual(whole);
    for (let size = 1; size < 12; size += 1) {
      expect(await told(Array.from({ length: Math.ceil(text.length / size) }, (_, piece) => text.slice(piece * size, (piece + 1) * size)))).toEqual(whole);
    }
  });

  it("leaves a text of several lines alone that does not look like rows", async () => {
    expect(await told('a,b,c\n1,"north side,\nby the gate",3\n4,5,6\n')).toEqual([[2, "1|north side,\nby the gate|3"], [3, "4|5|6"]]);
    expect(await told('a\n"north side\nby the gate"\n')).toEqual([[2, "north side\nby the gate"]]);
  });

  it("has a cell of a hundred lines at most behind it", async () => {
    const text = (lines: number): string => `a,b\n"${"x\n".repeat(lines - 1)}x",2\n3,4\n`;
    expect((await all(text(100))).map(({ ok }) => ok)).toEqual([true, true]);
    expect((await told(text(101)))[0]).toEqual(open(2));
    expect((await told(text(101))).at(-1)).toEqual([104 - 1, "3|4"]);
  });
});
