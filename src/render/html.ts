import type { Solution } from "../core/solution.js";
import { markupText } from "./formula-mathml.js";
import { cellElement, stepElements } from "./mathml.js";
import type { PageOptions, RenderOptions } from "./reading.js";
import type { Block, Cell, List, Section, Steps, Table, WorkedStep } from "./section.js";
import { styleSheet } from "./style-sheet.js";
import { tell } from "./tell.js";
import { figureText, stepNotes, stepTitle } from "./typed.js";
import { unitLetters } from "./unit-letters.js";

export { styleSheet };

/** What an HTML solution takes besides. */
export interface HtmlOptions extends RenderOptions, PageOptions {
  /** Whether the style sheet stands in it. It does unless told otherwise; `styleSheet` is the same text, for a file of its own. */
  readonly style?: boolean;
}

/**
 * A solution in HTML, with the same content as `sentence` and its formulas in MathML: a part to put into a document, or with
 * `page` a whole one, which prints in black and white. It holds no script, no style attribute, and asks for nothing from
 * elsewhere. Names that users chose are escaped.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants, and what of it is shown
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * html(solution, { style: false }).startsWith('<article class="worked" lang="en">\n<h2>Yield of a bag by density</h2>'); // true
 * ```
 */
export function html(solution: Solution, options: HtmlOptions = {}): string {
  const { page = false, style = true } = options;
  const section = tell(solution, options);
  const [title, ...rest] = sectionElements(section, page ? 1 : 2);
  const sheet = style ? [`<style>\n${styleSheet}</style>`] : [];
  const article = (tag: string, inside: readonly string[]): readonly string[] => [`<${tag} class="worked" lang="en">`, ...inside, `</${tag}>`];
  if (!page) return `${article("article", [...sheet, title ?? "", ...rest]).join("\n")}\n`;
  const head = ['<meta charset="utf-8">', '<meta name="viewport" content="width=device-width, initial-scale=1">', `<title>${markupText(section.title)}</title>`, ...sheet];
  return `${["<!doctype html>", '<html lang="en">', "<head>", ...head, "</head>", "<body>", ...article("main", [title ?? "", ...rest]), "</body>", "</html>"].join("\n")}\n`;
}

function heading(text: string, level: number): string {
  const tag = `h${String(Math.min(level, 6))}`;
  return `<${tag}>${markupText(text)}</${tag}>`;
}

function sectionElements({ title, blocks, parts }: Section, level: number): readonly string[] {
  return [
    heading(title, level),
    ...blocks.flatMap((block) => ["<section>", heading(block.title, level + 1), ...blockElements(block), "</section>"]),
    ...parts.flatMap((part) => ["<section>", ...sectionElements(part, level + 1), "</section>"]),
  ];
}

function blockElements(block: Block): readonly string[] {
  switch (block.kind) {
    case "table":
      return tableElements(block);
    case "list":
      return listElements(block);
    case "steps":
      return [`<ol class="${block.blank ? "steps sheet" : "steps"}">`, ...block.steps.flatMap((step) => stepItem(step, block)), "</ol>"];
  }
}

function listElements({ lines, numbered }: List): readonly string[] {
  const items = lines.map((line, index) => `<li>${numbered ? `[${String(index + 1)}] ` : ""}${markupText(line)}</li>`);
  return [numbered ? '<ul class="sources">' : "<ul>", ...items, "</ul>"];
}

/** A table with a head for each column; its first column heads the rows. */
function tableElements({ head, rows }: Table): readonly string[] {
  const titles = head.map((title) => `<th scope="col">${markupText(title)}</th>`).join("");
  const body = rows.map(([first = [], ...others]) => `<tr><th scope="row">${cellHtml(first)}</th>${others.map((cell) => `<td>${cellHtml(cell)}</td>`).join("")}</tr>`);
  return ["<table>", `<thead><tr>${titles}</tr></thead>`, "<tbody>", ...body, "</tbody>", "</table>"];
}

function cellHtml(cell: Cell): string {
  return cell.map((one) => (typeof one === "string" ? markupText(one) : "symbol" in one ? cellElement(one) : markupText(figureText({ ...one, unit: unitLetters(one.unit) }).replaceAll(" ", "\u00a0")))).join("");
}

function stepItem(step: WorkedStep, block: Steps): readonly string[] {
  const ways = stepElements(step, block).map(({ title, math }) => `<div class="way">${title === "" ? "" : `<p class="system">${markupText(title)}</p>`}${math}</div>`);
  const notes = block.blank ? [] : stepNotes(step);
  return ["<li>", `<p>${markupText(stepTitle(step))}</p>`, ...(ways.length > 1 ? ['<div class="ways">', ...ways, "</div>"] : ways), ...notes.map((note) => `<p>${markupText(note)}</p>`), "</li>"];
}
