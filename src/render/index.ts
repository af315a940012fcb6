/**
 * A solution in words: plain text and Markdown. Who reads picks the units and the digits, not who computes.
 *
 * @packageDocumentation
 */
export { markdown } from "./markdown.js";
export type { RenderOptions } from "./reading.js";
export { text } from "./text.js";
