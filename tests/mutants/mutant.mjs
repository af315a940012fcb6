// What a mutant is: one place of a file with another text.

/**
 * @typedef {object} Mutant
 * @property {string} id - file, place and number; the same as long as the file is the same
 * @property {string} file - from the top folder
 * @property {number} line
 * @property {string} within - the row of a definition or the function it lies in
 * @property {"formula" | "limit" | "default" | "value" | "whole" | "unit" | "step" | "code"} kind
 * @property {number} start
 * @property {number} end
 * @property {string} text - what stands from start to end instead
 * @property {string} before - its lines as they are, in one line
 * @property {string} after - its lines as they become
 */

/** @typedef {{ readonly kind: Mutant["kind"], readonly start: number, readonly end: number, readonly text: string }} Change */

const oneLine = (/** @type {string} */ text) => text.trim().replace(/\s+/g, " ");

/**
 * A change with its line and the text about it.
 *
 * @param {string} file @param {string} text - of the file @param {string} within @param {Change} change
 * @returns {Omit<Mutant, "id">}
 */
export function mutantOf(file, text, within, change) {
  const from = text.lastIndexOf("\n", change.start - 1) + 1;
  const end = text.indexOf("\n", change.end);
  const to = end === -1 ? text.length : end;
  // Of a long line only what lies about the change is told, the same on both sides.
  const before = text.slice(Math.max(from, change.start - 60), Math.min(to, change.end + 60));
  const after = text.slice(Math.max(from, change.start - 60), change.start) + change.text + text.slice(change.end, Math.min(to, change.end + 60));
  return { ...change, file, within, line: text.slice(0, change.start).split("\n").length, before: oneLine(before), after: oneLine(after) };
}

/** The number at the head of a text a little larger and a little smaller: a tenth, or one where it is a small whole number. */
const number = /^(-?)(\d+-)?(\d+)(\.\d+)?(?:\/(\d+))?/;

/**
 * Numbers a little off: `"3/8 in"` becomes `"4/8 in"` and `"2/8 in"`, `"20 %"` `"22 %"` and `"18 %"`.
 *
 * @param {string} text @returns {readonly string[]}
 */
export function nearTo(text) {
  const found = number.exec(text);
  if (found === null) return [];
  const [all, sign = "", whole = "", digits = "", decimals = "", below] = found;
  const rest = text.slice(all.length);
  if (below !== undefined) return [1, -1].map((by) => `${sign}${whole}${String(Number(digits) + by)}/${below}${rest}`);
  const places = decimals.length === 0 ? 0 : decimals.length - 1;
  const scaled = Number(digits + decimals.slice(1));
  const step = Math.max(1, Math.round(scaled / 10));
  return [step, -step].map((by) => {
    const value = scaled + by;
    const shown = (Math.abs(value) / 10 ** places).toFixed(places);
    return `${value < 0 ? (sign === "-" ? "" : "-") : sign}${whole}${shown}${rest}`;
  });
}
