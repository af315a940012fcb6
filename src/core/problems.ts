/** Where in the input a problem lies: keys and places in lists, from the outside in. */
export type Path = readonly (string | number)[];

/**
 * What can be wrong with an input.
 *
 * - `missing`, `unknown`, `either`: keys that are not there, not known, or not one of a pair
 * - `wrongKind`, `empty`, `tooLong`, `notANumber`, `notFinite`, `comma`, `tooLarge`: what was given cannot be read
 * - `noUnit`, `unknownUnit`, `wrongDimension`: the unit
 * - `tooLow`, `tooHigh`, `notWhole`, `notAChoice`: what was read is not allowed
 * - `noAnswer`: a step has no finite value, or one outside its own limits
 * - `refused`: the rule at hand does not allow it; the wording says why
 */
export type ProblemCode =
  | "missing" | "unknown" | "either"
  | "wrongKind" | "empty" | "tooLong" | "notANumber" | "notFinite" | "comma" | "tooLarge"
  | "noUnit" | "unknownUnit" | "wrongDimension"
  | "tooLow" | "tooHigh" | "notWhole" | "notAChoice"
  | "noAnswer" | "refused";

/** One thing that is wrong: where, what was given, what is wanted, and the same in words. */
export interface Problem {
  readonly code: ProblemCode;
  readonly path: Path;
  /** What the input is, in words; empty where it has none. */
  readonly says: string;
  /** What was given, as text; empty where nothing was. */
  readonly given: string;
  /** What is wanted, and how to write it. */
  readonly wanted: string;
  readonly message: string;
}

/** A problem before it is put into words; `says` is what the input is. */
export interface Trouble {
  readonly code: ProblemCode;
  readonly path: Path;
  readonly says?: string | undefined;
  readonly given: string;
  readonly wanted: string;
}

/** How each problem reads, after the name of the input. */
const wording: Readonly<Record<ProblemCode, (given: string, wanted: string) => string>> = {
  missing: (_, wanted) => (wanted === "" ? "is missing" : `is missing; ${wanted}`),
  unknown: (_, wanted) => `is not known here; ${wanted}`,
  either: (given, wanted) => `${given}; ${wanted}`,
  wrongKind: (given, wanted) => `${given} cannot be read; ${wanted}`,
  empty: (_, wanted) => `is empty; ${wanted}`,
  tooLong: (given, wanted) => `${given} is too long; ${wanted}`,
  notANumber: (given, wanted) => `${given} has no number that can be read; ${wanted}`,
  notFinite: (given, wanted) => `${given} is not a finite number; ${wanted}`,
  comma: (given, wanted) => `${given} has a comma in its number; write 1250 or 1.25, without a comma; ${wanted}`,
  tooLarge: (given, wanted) => `${given} has too large an exponent or too many digits; ${wanted}`,
  noUnit: (given, wanted) => `${given} has no unit; ${wanted}`,
  unknownUnit: (given, wanted) => `${given} has a unit that is not known; ${wanted}`,
  wrongDimension: (given, wanted) => `${given}; ${wanted}`,
  tooLow: (given, wanted) => `is ${given}, but must be ${wanted}`,
  tooHigh: (given, wanted) => `is ${given}, but must be ${wanted}`,
  notWhole: (given, wanted) => `is ${given}, but must be ${wanted}`,
  notAChoice: (given, wanted) => `${given} is not offered; ${wanted}`,
  noAnswer: (given, wanted) => `has no answer${given === "" ? "" : ` (${given})`}, because ${wanted}`,
  refused: (given, wanted) => (given === "" ? wanted : `${given}: ${wanted}`),
};

/** Puts a problem into words: `depth (depth of joint to be filled): "3/8" has no unit; write one of in, ft, mm, m`. */
export function problem({ code, path, says = "", given, wanted }: Trouble): Problem {
  const name = pathText(path);
  const label = name === "" ? says || "input" : says === "" ? name : `${name} (${says})`;
  return Object.freeze({ code, path: Object.freeze([...path]), says, given, wanted, message: `${label}: ${wording[code](given, wanted)}` });
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
  return problem({ ...inner, path: [...outer, ...inner.path] });
}

/** What a value looks like in a message: short, on one line, never more than a glance. */
export function shown(value: unknown): string {
  if (typeof value === "string") {
    const line = value.slice(0, 400).replace(/[\s\p{Cc}]+/gu, " ");
    return `"${line.length > 40 ? `${line.slice(0, 37)}…` : line}"`;
  }
  if (typeof value === "number" || typeof value === "boolean" || value === null || value === undefined) return String(value);
  if (Array.isArray(value)) return "a list";
  return typeof value === "object" ? "an object" : `a ${typeof value}`;
}

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
  return best !== undefined && best.far <= Math.max(2, Math.floor(best.name.length / 3)) ? best.name : undefined;
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
