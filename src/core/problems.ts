import type { DimensionName } from "./dimensions.js";
import { deepFrozen } from "./frozen.js";
import { english, type ProblemCode, type Wanted, type Wording, type Words } from "./wording.js";

export type { ProblemCode };

/** Where in the input a problem lies: keys and places in lists, from the outside in. */
export type Path = readonly (string | number)[];

/** One thing that is wrong: where, what was given, what is wanted, and the same in words. */
export interface Problem {
  readonly code: ProblemCode;
  readonly path: Path;
  /** What the input is, in words; empty where it has none. */
  readonly says: string;
  /** What was given, as text; empty where nothing was. */
  readonly given: string;
  /** What was given as data, where it is told in words: `3 layers`. */
  readonly gives?: Words;
  /** The dimension of what was given, where it is the wrong one. */
  readonly found?: DimensionName;
  /** What is wanted, as data. */
  readonly wants: Wanted;
  /** What is wanted and how to write it, in English. */
  readonly wanted: string;
  /** All of it, in English. */
  readonly message: string;
}

/** A problem before it is put into words; `says` is what the input is. */
export interface Trouble {
  readonly code: ProblemCode;
  readonly path: Path;
  readonly says?: string | undefined;
  readonly given: string;
  readonly gives?: Words;
  /** What is wanted: as data, or in words that are told in no other language. */
  readonly wanted: string | Wanted;
  readonly found?: DimensionName;
}

/** Puts a problem into words: `depth (depth of joint to be filled): "3/8" has no unit; write one of in, ft, mm, m`. */
export function problem({ code, path, says = "", given, gives, wanted, found }: Trouble): Problem {
  const wants: Wanted = typeof wanted === "string" ? { kind: "words", words: wanted } : wanted;
  const told = { code, path: Object.freeze([...path]), says, given, wants: deepFrozen(wants), ...(found === undefined ? {} : { found }), ...(gives === undefined ? {} : { gives: deepFrozen(gives) }) };
  return Object.freeze({ ...told, wanted: wantedText(wants, english), message: problemText(told, english) });
}

function wantedText(wants: Wanted, { wanted }: Wording): string {
  // The compiler does not see that a kind and its words belong together.
  return (wanted[wants.kind] as (wants: Wanted) => string)(wants);
}

/**
 * A problem in the words of a language; an app can bring its own.
 *
 * @param of - a problem as an error or `.try` gives it
 * @param wording - how problems read in that language
 * @example
 * ```ts
 * const tried = dryFilm.try({ wetFilm: "18", volumeSolids: "55 %", coats: 2 });
 * tried.ok ? [] : tried.problems.map((one) => problemText(one, english)); // ['wetFilm (wet film of one coat): "18" has no unit; write a number and one of mil, um, in, ft, yd, mm']
 * ```
 */
export function problemText(of: Omit<Problem, "wanted" | "message">, wording: Wording): string {
  const { code, path, says, given, gives, wants, found } = of;
  const name = pathText(path);
  const called = wording.input(says);
  const label = name === "" ? called : says === "" ? name : `${name} (${called})`;
  return `${label}: ${wording.problems[code](gives === undefined ? given : wantedText(gives, wording), wantedText(wants, wording), found === undefined ? "" : wording.dimension(found))}`;
}

/**
 * A path in words.
 *
 * @example
 * ```ts
 * pathText(["layers", 2, "thickness"]); // "layers[2].thickness"
 * ```
 */
export function pathText(path: Path): string {
  return path.map((part, index) => (typeof part === "number" ? `[${String(part)}]` : index === 0 ? part : `.${part}`)).join("");
}

/** The same problem seen from further out. */
export function problemAt(outer: Path, inner: Problem): Problem {
  return problem({ ...inner, wanted: inner.wants, path: [...outer, ...inner.path] });
}

/** What a value looks like in a message: short, on one line, never more than a glance. */
export function shown(value: unknown): string {
  if (typeof value === "string") {
    const line = value.slice(0, 400).replace(/[\s\p{Cc}]+/gu, " ");
    return `"${line.length > 40 ? `${line.slice(0, 37)}…` : line}"`;
  }
  if (typeof value === "number" || typeof value === "boolean" || value === null || value === undefined) return String(value);
  if (typeof value === "object") return isList(value) ? "a list" : "an object";
  return `a ${typeof value}`;
}

/** Whether it holds its values in a row, not under names of its own: a list, a map, the fields of a form. */
export function isList(value: object): boolean {
  return Symbol.iterator in value;
}

/** No more problems than this are told of one call: who sends a hundred thousand wrong rows learns nothing from the last of them. */
export const mostProblems = 1000;

/** A message tells no more problems than this; the error holds them all. */
const mostTold = 50;

/**
 * Thrown for bad input: it holds every problem of the call, each with its path, what was given and what is wanted.
 *
 * @example
 * ```ts
 * try {
 *   coursedFace({ area: "312 ft2" } as never);
 * } catch (error) {
 *   if (error instanceof InputError) console.log(error.problems.map((problem) => problem.message));
 * }
 * ```
 */
export class InputError extends Error {
  /** Every problem of the call. */
  readonly problems: readonly Problem[];

  constructor(id: string, problems: readonly Problem[]) {
    const more = problems.length - mostTold;
    super(`${id}: ${problems.slice(0, mostTold).map((one) => one.message).join("\n  ")}${more > 0 ? `\n  and ${String(more)} more problems` : ""}`);
    this.name = "InputError";
    this.problems = Object.freeze([...problems]);
  }
}

/** The known key that a misspelt one is nearest to, if one is near. */
export function nearest(word: string, known: readonly string[]): string | undefined {
  const wanted = word.slice(0, 40).toLowerCase();
  const [best] = known.map((name) => ({ name, far: distance(wanted, name.toLowerCase()) })).sort((a, b) => a.far - b.far);
  if (best !== undefined && best.far <= Math.max(2, Math.floor(best.name.length / 3))) return best.name;
  // `relativeHumidity` for `humidity`, `length` for `unitLength`: where it can be but one.
  const alike = known.filter((name) => Math.min(wanted.length, name.length) > 3 && (wanted.includes(name.toLowerCase()) || name.toLowerCase().includes(wanted)));
  return alike.length === 1 ? alike[0] : undefined;
}

/** The choice that seems to be meant, or all there are. */
export function choiceOf(given: unknown, of: readonly string[]): Wanted {
  const near = typeof given === "string" && given.length > 3 ? nearest(given, of) : undefined;
  return near === undefined ? { kind: "choice", of } : { kind: "near", key: near };
}

/** How many letters must be changed, put in or taken out to make one word the other. */
function distance(a: string, b: string): number {
  let row = Array.from(`${b} `, (_, index) => index);
  for (const letter of a) {
    const next: number[] = [];
    row.forEach((above, j) => next.push(Math.min(above + 1, (next[j - 1] ?? above) + 1, (row[j - 1] ?? above + 1) + Number(letter !== b[j - 1]))));
    row = next;
  }
  return row[b.length] ?? 0;
}
