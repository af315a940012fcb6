import { Unzip, UnzipInflate } from "fflate";
import { InputError } from "../../core/problems.js";
import { refuse, trouble } from "./raw-row.js";
import { say } from "./refusals.js";

/** A workbook is held as it is stored, since the table of its parts is spread over it; what it unpacks to is not. */
export const largestWorkbook = 32 * 1024 * 1024;
/** What one part may unpack to. A sheet is read on the way and not held. */
const largestPart = 512 * 1024 * 1024;
/** So little goes in at a time, since a thousand times as much may come out. */
const step = 4096;

/** A stream of bytes that is held as a whole, where it is no larger than a workbook. */
export async function bytesOf(pieces: AsyncIterable<string | Uint8Array>): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const piece of pieces) {
    if (typeof piece === "string") refuse(trouble([], "", say("workbookFromText")));
    else {
      parts.push(piece);
      size += piece.length;
    }
    if (size > largestWorkbook) refuse(trouble([], "", say("workbookTooLarge", { most: largestWorkbook / 1024 / 1024 })));
  }
  const whole = new Uint8Array(size);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Takes the bytes of a part as they come, and is told which are the last. */
export type Taker = (bytes: Uint8Array, isLast: boolean) => void;

/**
 * Unpacks some parts of a zip, little by little.
 *
 * @param zip - all bytes of the zip
 * @param wanted - what takes the bytes of a part; nothing for parts that are passed over
 */
export function* unpacked(zip: Uint8Array, wanted: (name: string) => Taker | undefined): Generator<void, void, undefined> {
  let fault: unknown;
  const unzip = new Unzip((file) => {
    const take = wanted(file.name);
    if (take === undefined) return;
    let size = 0;
    file.ondata = (error, bytes, isLast) => {
      // What is thrown here comes back as an error of the unpacking.
      fault ??= error ?? undefined;
      if (fault !== undefined) return;
      size += bytes.length;
      if (size > largestPart) refuse(trouble([], file.name, say("unpacksToTooMuch")));
      take(bytes, isLast);
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  for (let at = 0; at < zip.length && fault === undefined; at += step) {
    try {
      unzip.push(zip.subarray(at, at + step), at + step >= zip.length);
    } catch (error) {
      fault ??= error;
    }
    if (fault === undefined) yield;
  }
  if (fault instanceof InputError) throw fault;
  if (fault !== undefined) refuse(trouble([], "", say("brokenWorkbook")));
}
