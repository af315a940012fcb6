// Changes of a formula's text: operators, functions, numbers and names.
import { nearTo } from "./mutant.mjs";

const token = /\d+(?:\.\d+)?|[a-z][a-z0-9]*|[-+*/^(),]/gi;
/** @type {Readonly<Record<string, string>>} */
const others = { "+": "-", "-": "+", "*": "/", "/": "*", min: "max", max: "min", ceil: "floor", floor: "ceil", round: "ceil" };
const roundings = ["ceil", "floor", "round"];
const functions = [...roundings, "min", "max", "sqrt", "ln", "log10", "exp", "sin", "asin", "pi"];

/**
 * @param {string} text - of the formula
 * @param {ReadonlyMap<string, string>} known - the dimension of every name that it may use
 * @returns {readonly { readonly start: number, readonly end: number, readonly text: string }[]}
 */
export function formulaChanges(text, known) {
  const tokens = [...text.matchAll(token)].map(([written, ], index, all) => ({ written, at: /** @type {number} */ (/** @type {unknown} */ (all[index]?.index)) }));
  return tokens.flatMap(({ written, at }, index) => {
    const put = (/** @type {string} */ instead) => ({ start: at, end: at + written.length, text: instead });
    const before = tokens[index - 1]?.written ?? "(";
    if (written === "-" && /^[-+*/^(,]$/.test(before)) return [put("")];
    if (roundings.includes(written)) return [put(others[written] ?? ""), put("")];
    if (Object.hasOwn(others, written)) return [put(others[written] ?? "")];
    if (/^\d/.test(written)) return nearTo(written).slice(0, 1).map(put);
    if (!/^[a-z]/i.test(written) || functions.includes(written)) return [];
    const alike = [...known].filter(([name, is]) => name !== written && is === known.get(written)).map(([name]) => name);
    // One other name is enough, and which one depends on the place.
    const other = alike[index % alike.length];
    return other === undefined ? [] : [put(other)];
  });
}
