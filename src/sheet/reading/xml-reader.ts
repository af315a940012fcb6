import { SaxesParser } from "saxes";
import { refuse, trouble } from "./raw-row.js";
import { say } from "./refusals.js";
import type { Taker } from "./unzip.js";

/** Far more than a spreadsheet lets one write into a cell. */
const longestText = 1_000_000;
const step = 1 << 16;

/** What is told of a part while it is read: each element as it begins and ends, and the text in it. */
export interface Listener {
  readonly begin: (name: string, attributes: Readonly<Record<string, string>>) => void;
  readonly end?: (name: string, text: string) => void;
}

/** Reads XML as its bytes come, without keeping it; names are told without what stands before a colon. */
export function xmlReader(part: string, { begin, end }: Listener): Taker {
  const decoder = new TextDecoder("utf-8");
  const parser = new SaxesParser<{ xmlns: false; position: false }>({ xmlns: false, position: false });
  const local = (name: string): string => name.slice(name.indexOf(":") + 1);
  let text = "";
  let told = 0;
  let fed = 0;
  parser.on("opentag", ({ name, attributes }) => {
    text = "";
    told = fed;
    begin(local(name), attributes);
  });
  parser.on("text", (more) => {
    told = fed;
    text += more;
  });
  parser.on("closetag", ({ name }) => {
    told = fed;
    end?.(local(name), text);
    text = "";
  });
  parser.on("doctype", () => {
    refuse(trouble([], part, say("hasDocumentType")));
  });
  parser.on("error", () => {
    refuse(trouble([], part, say("cannotBeRead")));
  });
  return (bytes, isLast) => {
    for (let at = 0; at < bytes.length; at += step) {
      const piece = bytes.subarray(at, at + step);
      fed += piece.length;
      parser.write(decoder.decode(piece, { stream: true }));
      // A mark, a comment or a text that does not end would be kept as long as it goes on.
      if (fed - told > longestText) refuse(trouble([], part, say("textTooLong")));
    }
    if (isLast) parser.close();
  };
}
