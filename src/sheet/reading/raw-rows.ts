import { csvRows } from "./csv-rows.js";
import type { FileOptions, RawRow, RowSource } from "./raw-row.js";
import { textPieces } from "./text-pieces.js";
import { workbookRows } from "./workbook-rows.js";

/** The rows of a CSV or of a sheet of a workbook, whichever the file is by its first bytes. */
export async function* rawRows(source: RowSource, { delimiter, sheet }: FileOptions): AsyncGenerator<RawRow, void, undefined> {
  const pieces = typeof source === "string" || source instanceof Uint8Array ? [source] : source;
  const all = peeked(pieces);
  const start = await all.next();
  const first = start.done === true ? "" : start.value;
  const rest = continued(first, all);
  if (first instanceof Uint8Array && isZip(first)) yield* workbookRows(rest, sheet);
  else yield* csvRows(textPieces(rest), delimiter);
}

/** The pieces of a source, the first of which has four bytes or letters at least, where the source has so many. */
async function* peeked(pieces: AsyncIterable<string | Uint8Array> | Iterable<string | Uint8Array>): AsyncGenerator<string | Uint8Array, void, undefined> {
  let held: Uint8Array | undefined;
  for await (const piece of pieces) {
    if (typeof piece === "string") {
      if (held !== undefined) yield held;
      held = undefined;
      if (piece !== "") yield piece;
      continue;
    }
    held = held === undefined ? piece : joined(held, piece);
    if (held.length < 4) continue;
    yield held;
    held = undefined;
  }
  if (held !== undefined && held.length > 0) yield held;
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}

async function* continued<T>(first: T, rest: AsyncIterable<T>): AsyncGenerator<T, void, undefined> {
  yield first;
  yield* rest;
}

/** Whether bytes begin as a zip does, which a workbook is. */
function isZip(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b && bytes[2] === 0x03 && bytes[3] === 0x04;
}
