// Where in a text of JSON a value stands, so that a problem can lead to its line.
import { findNodeAtLocation, parseTree } from "jsonc-parser";

/** From which letter to which a part of the text goes. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** Where the value at a path stands in a text that is JSON, with its key; where there is none, as with a missing key, what it is missing in. */
export function placeAt(text: string, path: readonly (string | number)[]): Span {
  const whole = parseTree(text);
  if (whole === undefined) return { start: 0, end: text.length };
  const found = findNodeAtLocation(whole, [...path]);
  if (found === undefined) return placeAt(text, path.slice(0, -1));
  const { offset, length } = found.parent?.type === "property" ? found.parent : found;
  return { start: offset, end: offset + length };
}

/** The line in which a letter stands, from 1. */
export function lineAt(text: string, letter: number): number {
  return text.slice(0, letter).split("\n").length;
}
