/** What a spreadsheet takes for a cell, in letters and numbers or by row and column, or for a truth value. */
const takenForCell = /^([a-z]{1,3}\d+|r\d*(c\d*)?|c\d*(r\d*)?|true|false)$/i;

/**
 * A text as a legal defined name: letters, digits and underscores, no cell address, not longer than 255 letters.
 *
 * @example
 * ```ts
 * legalName("bag 1"); // "bag_1"
 * legalName("lap2"); // "lap2_"
 * legalName("ft2/gal"); // "ft2_per_gal"
 * ```
 */
export function legalName(text: string): string {
  const plain = text
    .slice(0, 200)
    .replace(/%/g, " percent")
    .replace(/\//g, " per ")
    .replace(/°/g, " deg ")
    .trim()
    .replace(/[^\p{L}\p{N}_]+/gu, "_")
    .replace(/_+$/, "");
  const begun = /^[\p{L}_]/u.test(plain) ? plain : `_${plain}`;
  return takenForCell.test(begun) ? `${begun}_` : begun;
}

/** Gives out names: each once, whatever their capitals, with a number where one is wanted again. */
export class Names {
  readonly #taken = new Set<string>();
  readonly #legal: (text: string) => string;

  /** @param legal - how a text becomes a name */
  constructor(legal: (text: string) => string) {
    this.#legal = legal;
  }

  /** The name for a text, or the next one like it that is free. */
  take(text: string): string {
    for (let count = 1; ; count += 1) {
      const name = this.#legal(count === 1 ? text : `${text} ${String(count)}`);
      if (this.#taken.has(name.toLowerCase())) continue;
      this.#taken.add(name.toLowerCase());
      return name;
    }
  }
}

/** A text as the title of a sheet: at most 31 letters, and none that a spreadsheet forbids; a number at its end is kept. */
export function legalTitle(text: string): string {
  const [, words = "", number = ""] = /^(.*?)( \d+)?$/s.exec(text.slice(0, 200).replace(/[[\]:*?/\\\p{Cc}]+/gu, " ").replace(/\s+/g, " ").replace(/^[' ]+|[' ]+$/g, "")) ?? [];
  const most = 31 - number.length;
  // A title that is too long ends with a whole word.
  const short = words.length <= most ? words : words.slice(0, most + 1).replace(/\s\S*$/, "").slice(0, most);
  const title = `${short.trim()}${number}`.replace(/'+$/, "");
  return title === "" || title.toLowerCase() === "history" ? `${title} sheet`.trim() : title;
}
