import { sentence } from "../../core/refusals.js";
import type { RefusalTexts } from "../refusals.js";

const kinds: Readonly<Record<string, string>> = { "a list": "una lista", "an object": "un objeto", "a text": "un texto", "a number": "un número", "true or false": "true o false" };

/** Why nested input is refused, in Spanish. */
export const schema: RefusalTexts["schema"] = {
  mostLetters: ({ most }) => sentence`escriba a lo más ${most} letras`,
  writeKind: ({ kind }) => sentence`escriba ${kinds[kind] ?? kind}`,
  oneThatIsKnown: () => "debe ser uno que se conozca",
};
