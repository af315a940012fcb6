/** A line may be as long as this. */
const longest = 160;

/**
 * A line, broken at its outermost objects where it is too long: each member stands in a line of its own, set in.
 *
 * @param {string} line
 * @returns {string[]}
 */
export function brokenUp(line) {
  const margin = line.length - line.trimStart().length;
  const open = line.indexOf("{ ");
  const close = open < 0 ? -1 : partner(line, open);
  if (line.length <= longest || close < 0 || line.startsWith("type ")) return [line];
  const members = parts(line.slice(open + 1, close)).flatMap((member) => brokenUp(`${" ".repeat(margin + 2)}${member};`));
  const [next = "", ...rest] = brokenUp(`${" ".repeat(margin)}${line.slice(close)}`);
  return [line.slice(0, open + 1), ...members, next, ...rest];
}

/** Where the bracket that is opened at a place closes; quoted texts are passed over. @param {string} text @param {number} from */
function partner(text, from) {
  let [depth, quoted] = [0, false];
  for (let at = from; at < text.length; at += 1) {
    if (text[at] === '"' && text[at - 1] !== "\\") quoted = !quoted;
    if (quoted) continue;
    if (text[at] === "{") depth += 1;
    if (text[at] === "}") depth -= 1;
    if (depth === 0) return at;
  }
  return -1;
}

/** The members between two brackets. @param {string} text @returns {string[]} */
function parts(text) {
  /** @type {string[]} */
  const found = [];
  let [depth, quoted, from] = [0, false, 0];
  for (let at = 0; at <= text.length; at += 1) {
    if (text[at] === '"' && text[at - 1] !== "\\") quoted = !quoted;
    if (!quoted && (text[at] === "{" || text[at] === "(" || text[at] === "[")) depth += 1;
    if (!quoted && (text[at] === "}" || text[at] === ")" || text[at] === "]")) depth -= 1;
    if (at === text.length || (!quoted && depth === 0 && text[at] === ";")) {
      if (text.slice(from, at).trim() !== "") found.push(text.slice(from, at).trim());
      from = at + 1;
    }
  }
  return found;
}
