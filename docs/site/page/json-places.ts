// Where in a text of JSON a value stands, so that a problem can lead to its line.

/** From which letter to which a part of the text goes. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** A value of the text: where it stands, with its key where it has one, and what is in it. */
interface Place extends Span {
  readonly inner: ReadonlyMap<string, Place>;
}

/** One token: a text, a bracket or other sign, or a number or word. */
const token = /"(?:[^"\\]|\\.)*"|[{}[\]:,]|[^\s{}[\]:,"]+/g;

/**
 * Where the value at a path stands in a text that is JSON; where there is none, as with a missing key, what it is missing in.
 * Of a key given twice the last counts, as it does where the text is read.
 */
export function placeAt(text: string, path: readonly (string | number)[]): Span {
  let place = placesOf(text);
  for (const key of path) {
    const next = place.inner.get(String(key));
    if (next === undefined) break;
    place = next;
  }
  return { start: place.start, end: place.end };
}

/** The line in which a letter stands, from 1. */
export function lineAt(text: string, letter: number): number {
  return text.slice(0, letter).split("\n").length;
}

function placesOf(text: string): Place {
  const tokens = [...text.matchAll(token)].map((found) => ({ word: found[0], start: found.index, end: found.index + found[0].length }));
  let next = 0;
  const take = (): { readonly word: string } & Span => tokens[next++] ?? { word: "", start: text.length, end: text.length };
  const value = (from?: number): Place => {
    const first = take();
    const inner = new Map<string, Place>();
    if (first.word !== "{" && first.word !== "[") return { start: from ?? first.start, end: first.end, inner };
    while (next < tokens.length && !/^[}\]]$/.test(tokens[next]?.word ?? "")) {
      if (first.word === "[") inner.set(String(inner.size), value());
      else {
        const key = take();
        take();
        inner.set(JSON.parse(key.word) as string, value(key.start));
      }
      if (tokens[next]?.word === ",") next += 1;
    }
    return { start: from ?? first.start, end: take().end, inner };
  };
  return value();
}
