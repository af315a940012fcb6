import type { Wording } from "../core/wording.js";
import type { RefusalTexts } from "./refusals.js";
import type { spanishNames } from "./spanish/names.js";

/** The English words of every input and step that a problem may name. */
export type InputName = keyof typeof spanishNames;

/** What a wording is made of: the sentences of the engine, and what the topics add to them. */
export interface WordingParts extends Omit<Wording, "input" | "wanted"> {
  /** What an input is called that has no name. */
  readonly input: string;
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
export function wordingOf({ input, refusals, names, wanted, ...sentences }: WordingParts): Wording {
  return {
    ...sentences,
    input: (says) => (says === "" ? input : (own(names, says) ?? says)),
    wanted: {
      ...wanted,
      words({ words, name = "", values }) {
        const [topic = "", refusal = ""] = name.split(".");
        const texts = own<Readonly<Record<string, unknown>>>(refusals, topic);
        const text = texts === undefined ? undefined : own(texts, refusal);
        // The compiler has seen that the name has its text, and the text its values; here they come as data.
        return text === undefined ? words : (text as (of: typeof values) => string)(values);
      },
    },
  };
}

/** A key of the object itself: a word that comes from outside may be `constructor`. */
function own<T>(of: object, key: string): T | undefined {
  return Object.hasOwn(of, key) ? (of as Readonly<Record<string, T>>)[key] : undefined;
}
