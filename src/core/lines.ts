import type { Fields, ReadEntries, Told } from "./read-entries.js";
import type { Line } from "./solution.js";

/** A line while it is being written; spreading is too slow here. */
export type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** The beginning of a line, to be written on. */
export function openLine<V extends Line["value"]>({ name, says, symbol, shown, basis }: Told, value: V, assumed: boolean): Writable<Line> & { value: V } {
  const line: Writable<Line> & { value: V } = { name, says, symbol, value, shown, assumed };
  if (basis !== undefined) line.basis = basis;
  return line;
}

/** The line of an input or a constant. */
export function lineOf<V extends Line["value"]>(told: Told, value: V, assumed: boolean): Line & { readonly value: V } {
  return Object.freeze(openLine(told, value, assumed));
}

/** The lines of what was given; an input left out has none. */
export function givenLines({ all }: Fields, { read }: ReadEntries): readonly Line[] {
  const lines: Line[] = [];
  for (let index = 0; index < read.length; index += 1) {
    const { value, assumed } = read[index] as ReadEntries["read"][number];
    if (value !== undefined) lines.push(lineOf(all[index] as Told, value, assumed));
  }
  return Object.freeze(lines);
}

/** What was assumed because nothing was given, and on what ground. */
export function assumptionsOf({ all }: Fields, { read }: ReadEntries): readonly string[] {
  const texts: string[] = [];
  for (let index = 0; index < read.length; index += 1) {
    const { assumption = "" } = all[index] ?? {};
    if (read[index]?.assumed === true && assumption !== "") texts.push(assumption);
  }
  return Object.freeze(texts);
}
