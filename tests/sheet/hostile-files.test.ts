// What is no sheet, or far too much of one, gives a clear error within bounded memory.
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { InputError } from "../../src/core/index.js";
import { readRows, type RowSource } from "../../src/sheet/index.js";

async function read(source: RowSource): Promise<{ readonly rows: number; readonly problem: string }> {
  let rows = 0;
  try {
    for await (const { row } of readRows(source)) rows = row - 1;
  } catch (error) {
    if (error instanceof InputError) return { rows, problem: error.problems.map(({ message }) => message).join("; ") };
    throw error;
  }
  return { rows, problem: "" };
}

function* repeated(first: string, piece: string, times: number): Generator<Uint8Array> {
  yield strToU8(first);
  const bytes = strToU8(piece);
  for (let count = 0; count < times; count += 1) yield bytes;
}

/** The most memory that was in use above that at the start, in MB, while something ran. */
async function memoryOf(run: () => Promise<unknown>): Promise<number> {
  const used = (): number => process.memoryUsage().heapUsed + process.memoryUsage().external;
  const start = used();
  let most = 0;
  const timer = setInterval(() => (most = Math.max(most, used() - start)), 5);
  await run();
  clearInterval(timer);
  return Math.max(most, used() - start) / 1e6;
}

const row = `${"x".repeat(498)},${"y".repeat(500)}\n`;

describe("a file", () => {
  it("of 100 MB is read row by row, in far less memory than it has", async () => {
    let found = { rows: 0, problem: "" };
    const memory = await memoryOf(async () => (found = await read(repeated("a,b\n", row.repeat(65), 1600))));
    expect(found).toEqual({ rows: 65 * 1600, problem: "" });
    expect(memory).toBeLessThan(80);
  }, 300_000);

  it("with a quote that does not end loses one row, in bounded memory", async () => {
    const wrong: number[] = [];
    let rows = 0;
    const memory = await memoryOf(async () => {
      for await (const one of readRows(repeated('a,b\n"', row.repeat(65), 160))) {
        rows += 1;
        if (!one.ok) wrong.push(one.row);
      }
    });
    expect([rows, wrong]).toEqual([65 * 160, [2]]);
    expect(memory).toBeLessThan(80);
  });

  it("with a quote that does not end in every row is read to its end, each row refused", async () => {
    let rows = 0;
    for await (const one of readRows(repeated("a,b\n", '"x,y\n'.repeat(1000), 60))) rows += Number(!one.ok);
    expect(rows).toBe(60_000);
  }, 60_000);

  it("with NUL bytes, of zeros or of pictures is refused", async () => {
    expect((await read([strToU8("a,b\n1,\u00002\n")])).problem).toContain("bytes that no text has");
    expect((await read(repeated("", "\u0000".repeat(65_536), 1600))).problem).toContain("bytes that no text has");
    expect((await read([Uint8Array.of(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)])).problem).toContain("no text in UTF-8");
  });

  it("of one line without an end is refused", async () => {
    expect((await read(repeated("", "abc,".repeat(16_384), 1600))).problem).toContain("longer than 1000000 letters");
  });
});

const types = strToU8("<Types/>");
const book = '<workbook xmlns:r="r"><sheets><sheet name="one" sheetId="1" r:id="rId1"/></sheets></workbook>';
const links = '<Relationships><Relationship Id="rId1" Target="worksheets/sheet1.xml"/></Relationships>';

function zipped(sheet: Uint8Array | string, more: Readonly<Record<string, string>> = {}): Uint8Array {
  const parts = { "xl/workbook.xml": book, "xl/_rels/workbook.xml.rels": links, ...more };
  const texts = Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]));
  return zipSync({ "[Content_Types].xml": types, ...texts, "xl/worksheets/sheet1.xml": typeof sheet === "string" ? strToU8(sheet) : sheet });
}

const sheetOf = (rows: string): string => `<worksheet><sheetData>${rows}</sheetData></worksheet>`;
const text = (words: string): string => `<c t="inlineStr"><is><t>${words}</t></is></c>`;

describe("a workbook", () => {
  it("that unpacks to a thousand times its size is refused, or read within bounds", async () => {
    const bomb = zipped(`<worksheet><sheetData><row>${text("a")}</row><row><c t="inlineStr"><is><t>${"0".repeat(20_000_000)}</t></is></c></row></sheetData></worksheet>`);
    expect(bomb.length).toBeLessThan(30_000);
    let found = { rows: 0, problem: "" };
    const memory = await memoryOf(async () => (found = await read([bomb])));
    expect(found.problem).toContain("longer than a cell holds");
    expect(memory).toBeLessThan(150);
  }, 60_000);

  it("of 100 MB is refused", async () => {
    const { problem } = await read(repeated("PK\u0003\u0004", "x".repeat(65_536), 1600));
    expect(problem).toBe("input: the workbook is larger than 32 MB; save the sheet as CSV, which may be of any size");
  });

  it("with a document type, broken, cut off, or no workbook at all is refused", async () => {
    expect((await read([zipped(`<!DOCTYPE x [<!ENTITY a "aaaa">]>${sheetOf("")}`)])).problem).toContain("document type");
    expect((await read([zipped("<worksheet><sheetData><row></sheetData>")])).problem).toContain("cannot be read");
    expect((await read([zipSync({ "a.txt": strToU8("a") })])).problem).toContain("no workbook");
    const whole = zipped(sheetOf(`<row>${text("a")}</row>`));
    expect((await read([whole.subarray(0, whole.length / 2)])).problem).not.toBe("");
  });

  it("with a mark that does not end is refused", async () => {
    expect((await read([zipped(`<worksheet><!--${"-x".repeat(4_000_000)}`)])).problem).toContain("longer than a cell holds");
    expect((await read([zipped(`<worksheet><!--${"-x".repeat(4_000)}`)])).problem).toContain("cannot be read");
  });
});
