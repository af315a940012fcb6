/**
 * The wording of problems in other languages than English, for `problemText`.
 *
 * @packageDocumentation
 */
export { problemText } from "../core/problems.js";
export { english, type Wanted, type Wording } from "../core/wording.js";
export { spanish } from "./spanish.js";
