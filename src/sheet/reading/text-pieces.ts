import { refuse, trouble } from "./raw-row.js";
import { say } from "./refusals.js";

/** Pieces no longer than this, so that a file handed over whole is read in small steps too. */
const longestPiece = 1 << 16;

/** The text of a source in pieces: without a mark of the byte order, line ends as `\n`; what is no text is refused. */
export async function* textPieces(pieces: AsyncIterable<string | Uint8Array>): AsyncGenerator<string, void, undefined> {
  const decoder = new TextDecoder("utf-8", { fatal: true });
  let begun = false;
  let returned = "";
  const plain = (text: string): string => {
    if (text.includes("\u0000")) refuse(trouble([], "", say("bytesThatNoTextHas")));
    // A return at the end of a piece may be the half of a line end.
    let whole = returned + text;
    returned = whole.endsWith("\r") ? "\r" : "";
    whole = whole.slice(0, whole.length - returned.length);
    if (!begun && whole !== "") {
      begun = true;
      whole = whole.replace(/^\uFEFF/, "");
    }
    return whole.replace(/\r\n?/g, "\n");
  };
  for await (const piece of pieces) {
    for (let at = 0; at < piece.length; at += longestPiece) yield plain(decoded(decoder, piece.slice(at, at + longestPiece)));
  }
  yield plain(decoded(decoder)) + (returned === "" ? "" : "\n");
}

/** Bytes as text, the end of the bytes where there are none. */
function decoded(decoder: InstanceType<typeof TextDecoder>, piece?: string | Uint8Array): string {
  if (typeof piece === "string") return piece;
  try {
    return piece === undefined ? decoder.decode() : decoder.decode(piece, { stream: true });
  } catch {
    refuse(trouble([], "", say("noUtf8")));
    return "";
  }
}
