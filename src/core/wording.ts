import type { DimensionName } from "./dimensions.js";
import { spaced } from "./spaced.js";

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

/** Why an operation has no finite value. */
export type NoValueReason = "division" | "root" | "logarithm" | "arcsine" | "size";

/** A value that stands in words; a quantity is itself, so that a wording may show it in another unit. */
export type WordValue = string | number | readonly string[] | { readonly dimension: DimensionName; readonly toString: () => string } | readonly Words[];

/** Words as data: their name, `"film.dryFilmNeedsSolids"`, the values in them, and the same in English. */
export interface Words {
  readonly kind: "words";
  readonly words: string;
  /** The topic and the name in it; words of one's own need none. */
  readonly name?: string;
  readonly values?: Readonly<Record<string, WordValue>>;
}

interface WantedBy {
  /** A number, for a count. */
  readonly number: object;
  /** A number or a percentage, for a ratio. */
  readonly share: object;
  /** A number and one of these units. */
  readonly units: { readonly of: readonly string[] };
  /** A value within a limit; `percent` where a percentage seems to be meant. */
  readonly limit: { readonly limit: "above" | "atLeast" | "below" | "atMost"; readonly value: string; readonly percent?: string };
  /** A whole number. */
  readonly whole: object;
  /** One of these by name. */
  readonly choice: { readonly of: readonly string[] };
  /** An object with these keys. */
  readonly object: { readonly of: readonly string[] };
  /** One of these keys. */
  readonly key: { readonly of: readonly string[] };
  /** The key that seems to be meant. */
  readonly near: { readonly key: string };
  /** Exactly one of these inputs. */
  readonly exactlyOne: { readonly of: readonly string[] };
  /** Other inputs, for which the step has a value. */
  readonly value: { readonly reason: NoValueReason };
  /** An error that nothing foresaw, with what it said. */
  readonly unforeseen: { readonly reason: string };
  /** What only the function at hand knows. */
  readonly words: Words;
}

/** What is wanted instead, as data, for an app that words it itself. */
export type Wanted = { readonly [K in keyof WantedBy]: { readonly kind: K } & WantedBy[K] }[keyof WantedBy];

/** How problems read in a language. It is complete by its type: a code without words does not compile. */
export interface Wording {
  /** What an input is called, from its English words; they are empty where it has none. */
  readonly input: (says: string) => string;
  /** Each problem, after the name of the input: from what was given, what is wanted in words, and what was found. */
  readonly problems: Readonly<Record<ProblemCode, (given: string, wanted: string, found: string) => string>>;
  readonly wanted: { readonly [K in keyof WantedBy]: (wanted: WantedBy[K]) => string };
  /** The dimension of what was given. */
  readonly dimension: (name: DimensionName) => string;
}

const list = (names: readonly string[]): string => names.join(", ");
const reasons: Readonly<Record<NoValueReason, string>> = {
  division: "it divides by 0",
  root: "it takes a root of a negative number",
  logarithm: "it takes the logarithm of a number that is not above 0",
  arcsine: "it takes the arcsine of a number beyond 1",
  size: "the number gets too large",
};
const limits = { above: "above", atLeast: "at least", below: "below", atMost: "at most" };
const but = (given: string, wanted: string): string => `is ${given}, but must be ${wanted}`;

/** A number without its comma, `1250 or 1.250`: it may part thousands or be the decimal sign. */
export function withoutComma(given: string, or: string): string {
  const [number = ""] = /\d[\d,.]*/.exec(given) ?? [];
  const plain = number.replaceAll(",", "");
  return /[,.]\d+[,.]/.test(number) ? plain : `${plain} ${or} ${number.replace(",", ".")}`;
}

/** How problems read in English. */
export const english: Wording = {
  input: (says) => says || "input",
  dimension: (name) => `${/^[aeiou]/.test(name) ? "an" : "a"} ${spaced(name)}`,
  problems: {
    missing: (_, wanted) => (wanted === "" ? "is missing" : `is missing; ${wanted}`),
    unknown: (_, wanted) => `is not known here; ${wanted}`,
    either: (given, wanted) => `${given === "" ? "none is given" : `${given} exclude each other`}; ${wanted}`,
    wrongKind: (given, wanted) => `${given} cannot be read; ${wanted}`,
    empty: (_, wanted) => `is empty; ${wanted}`,
    tooLong: (given, wanted) => `${given} is too long; ${wanted}`,
    notANumber: (given, wanted) => `${given} has no number that can be read; ${wanted}`,
    notFinite: (given, wanted) => `${given} is not a finite number; ${wanted}`,
    comma: (given, wanted) => `${given} has a comma in its number; write ${withoutComma(given, "or")}; ${wanted}`,
    tooLarge: (given, wanted) => `${given} has too large an exponent or too many digits; ${wanted}`,
    noUnit: (given, wanted) => `${given} has no unit; ${wanted}`,
    unknownUnit: (given, wanted) => `${given} has a unit that is not known; ${wanted}`,
    wrongDimension: (given, wanted, found) => `${given} is ${found}; ${wanted}`,
    tooLow: but,
    tooHigh: but,
    notWhole: but,
    notAChoice: (given, wanted) => `${given} is not offered; ${wanted}`,
    noAnswer: (given, wanted) => `has no answer${given === "" ? "" : ` (${given})`}, because ${wanted}`,
    refused: (given, wanted) => (given === "" ? wanted : `${given}: ${wanted}`),
  },
  wanted: {
    number: () => "write a number",
    share: () => `write a number or a percentage, such as 0.1 or "10 %"`,
    units: ({ of }) => `write a number and one of ${list(of)}`,
    limit: ({ limit, value, percent }) => `${limits[limit]} ${value}${percent === undefined ? "" : `; did you mean "${percent}"?`}`,
    whole: () => "a whole number",
    choice: ({ of }) => `write one of ${list(of)}`,
    object: ({ of }) => `give an object with ${list(of)}`,
    key: ({ of }) => `there are ${list(of)}`,
    near: ({ key }) => `did you mean ${key}?`,
    exactlyOne: ({ of }) => `give exactly one of ${of.join(" and ")}`,
    value: ({ reason }) => reasons[reason],
    unforeseen: ({ reason }) => `it could not be worked out (${reason})`,
    words: ({ words }) => words,
  },
};
