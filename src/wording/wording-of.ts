import type { ProblemCode, Wording, Words, WordValue } from "../core/wording.js";
import type { RefusalTexts } from "./refusals.js";
import type { spanishNames } from "./spanish/names.js";

/** The English words of every input and step that a problem may name. */
export type InputName = keyof typeof spanishNames;

/** What is given that is no text and no number, as a problem shows it. */
type GivenKind = "a list" | "an object" | "a function" | "a symbol" | "a bigint";

/** What a wording is made of: the sentences of the engine, and what the topics add to them. */
export interface WordingParts extends Omit<Wording, "input" | "wanted"> {
  /** What an input is called that has no name. */
  readonly input: string;
  /** What stands between two names that exclude each other. */
  readonly and: string;
  /** What was given, where it is no text and no number. */
  readonly kinds: Readonly<Record<GivenKind, string>>;
  /** What is wanted, but for what a topic says of itself. */
  readonly wanted: Omit<Wording["wanted"], "words">;
  /** The refusals of every topic. */
  readonly refusals: RefusalTexts;
  /** The names of inputs and steps by their English words. */
  readonly names: Readonly<Record<InputName, string>>;
}

/**
 * Makes a wording for `problemText` out of its parts. What a function of your own says stays as you write it.
 *
 * @param parts - every part; the compiler asks for what is missing
 * @example
 * ```ts
 * const shouting = wordingOf({ ...spanishParts, input: "¡ENTRADA!" });
 * problemText({ code: "missing", path: [], says: "", given: "", wants: { kind: "number" } }, shouting); // "¡ENTRADA!: falta; escriba un número"
 * ```
 */
export function wordingOf(parts: WordingParts): Wording {
  const { input, and, kinds, refusals, names, wanted, problems, dimension } = parts;
  const tell = (code: ProblemCode): Wording["problems"][ProblemCode] => (given, ...rest) =>
    problems[code](code === "either" ? given.replaceAll(" and ", ` ${and} `) : String(own(kinds, given) ?? given), ...rest);
  const worded = ({ words, name = "", values = {} }: Pick<Words, "words" | "name" | "values">): string => {
    const [topic = "", refusal = ""] = name.split(".");
    const texts = own(refusals, topic);
    // The compiler has seen that every name has its text, and every text its values; here they come as data.
    const text = texts === undefined ? undefined : own(texts as object, refusal);
    return text === undefined ? words : (text as (of: Words["values"]) => string)(Object.fromEntries(Object.entries(values).map(([key, value]) => [key, wordedWithin(value)])));
  };
  const wordedWithin = (value: WordValue): WordValue =>
    Array.isArray(value) ? (value as readonly (string | Words)[]).map((one) => (typeof one === "string" ? one : { ...one, words: worded(one) })) as WordValue : value;
  return {
    input: (says) => (says === "" ? input : String(own(names, says) ?? says)),
    dimension,
    problems: Object.fromEntries((Object.keys(problems) as ProblemCode[]).map((code) => [code, tell(code)])) as Wording["problems"],
    wanted: { ...wanted, words: worded },
  };
}

/** A key of the object itself: a word that comes from outside may be `constructor`. */
function own(of: object, key: string): unknown {
  return Object.hasOwn(of, key) ? (of as Readonly<Record<string, unknown>>)[key] : undefined;
}
