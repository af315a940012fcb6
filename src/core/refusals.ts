import type { QuantityJson } from "./quantity.js";
import type { Words, WordValue } from "./wording.js";

/**
 * The refusals of a topic in English: each a name, and how its values read in words. Another language has the same names
 * with the same values, and the compiler asks for every one of them.
 */
export type Refusals = Readonly<Record<string, (values: never) => string>>;

/**
 * Puts values into a text as they read: a quantity with its unit, names with commas, sentences with semicolons.
 *
 * @example
 * ```ts
 * sentence`at least ${quantity("length", "15 mil")}, for ${["jambs", "sills"]}`; // "at least 15 mil, for jambs, sills"
 * ```
 */
export function sentence(parts: TemplateStringsArray, ...values: readonly WordValue[]): string {
  return parts.reduce((all, part, index) => `${all}${valueText(values[index - 1] ?? "")}${part}`);
}

// What a problem holds may have been JSON on its way; a quantity is then its value and unit.
function valueText(value: WordValue | QuantityJson): string {
  if (typeof value !== "object") return String(value);
  if ("dimension" in value) return value.toString();
  if ("unit" in value) return `${value.value} ${value.unit}`.trim();
  return value.map((one) => (typeof one === "string" ? one : one.words)).join(value.some((one) => typeof one === "object") ? "; " : ", ");
}

/** Words the refusals of a topic. */
export interface Say<R extends Refusals> {
  <Name extends keyof R & string>(name: Name, ...values: Parameters<R[Name]>): Words;
  /** The refusals in English. */
  readonly english: R;
}

/**
 * Makes the function by which a topic words its refusals: it gives them as data, with the English in it.
 *
 * @param topic - the name of the topic; a refusal is `"topic.name"`
 * @param english - the topic's refusals in English
 */
export function wordsFrom<const R extends Refusals>(topic: string, english: R): Say<R> {
  const say = <Name extends keyof R & string>(name: Name, ...given: Parameters<R[Name]>): Words => {
    const [values] = given as readonly [Words["values"]?];
    const words = (english[name] as (...given: unknown[]) => string)(...given);
    return { kind: "words", words, name: `${topic}.${name}`, ...(values === undefined ? {} : { values }) };
  };
  return Object.assign(say, { english });
}
