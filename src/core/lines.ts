import type { Fields, Told } from "./fields.js";
import type { ReadEntries } from "./read-entries.js";
import type { Line } from "./solution.js";

/** The line of an input or a constant. */
export function lineOf<V extends Line["value"]>({ name, says, symbol, shown, basis }: Told, value: V, assumed: boolean): Line & { readonly value: V } {
  // Written out both times: a property that is added later takes twice the memory.
  return Object.freeze(basis === undefined ? { name, says, symbol, value, shown, assumed } : { name, says, symbol, value, shown, assumed, basis });
}

/** The lines of what was given; an input left out has none. */
export function givenLines({ all }: Fields, { values, assumed }: ReadEntries): readonly Line[] {
  const lines: Line[] = [];
  all.forEach((field, index) => {
    const value = values[index];
    if (value !== undefined) lines.push(lineOf(field, value, assumed.includes(field)));
  });
  return Object.freeze(lines);
}

/** What was assumed because nothing was given, and on what ground. */
export function assumptionsOf({ assumed }: ReadEntries): readonly string[] {
  return assumed.length === 0 ? none : Object.freeze(assumed.map(({ assumption }) => assumption));
}

const none: readonly never[] = Object.freeze([]);
