/**
 * The wording of problems in other languages than English, for `problemText`.
 *
 * @packageDocumentation
 */
export { problemText } from "../core/problems.js";
export { sentence } from "../core/refusals.js";
export { english, type Wanted, type Wording, type Words, type WordValue } from "../core/wording.js";
export type { RefusalTexts } from "./refusals.js";
export { spanish, spanishParts } from "./spanish.js";
export { type InputName, wordingOf, type WordingParts } from "./wording-of.js";
