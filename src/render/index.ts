/**
 * A solution on paper or on a screen: text, Markdown, HTML, LaTeX, MathML. Who reads picks the units and the digits, not
 * who computes.
 *
 * @packageDocumentation
 */
export { html, type HtmlOptions, styleSheet } from "./html.js";
export { latex } from "./latex.js";
export { markdown } from "./markdown.js";
export { mathml } from "./mathml.js";
export type { Note, PageOptions, RenderOptions } from "./reading.js";
export { text } from "./text.js";
