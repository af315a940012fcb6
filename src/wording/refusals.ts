import type { commonRefusals } from "../core/common-refusals.js";
import type { Refusals } from "../core/refusals.js";
import type { filmRefusals } from "../film/refusals.js";
import type { jointsRefusals } from "../joints/refusals.js";

/** The same refusals in another language: every name of the English, each with the same values. */
type Worded<R extends Refusals> = { readonly [Name in keyof R]: (...values: Parameters<R[Name]>) => string };

/**
 * Every refusal that only one topic knows, by topic and name, as a function of its values. Who words them in a language of
 * his own writes an object of this type: the compiler names what is missing, and what its values are.
 */
export interface RefusalTexts {
  readonly common: Worded<typeof commonRefusals>;
  readonly film: Worded<typeof filmRefusals>;
  readonly joints: Worded<typeof jointsRefusals>;
}
