import type { AnyCallable } from "../../../src/core/callable.js";
import type { Solution } from "../../../src/core/solution.js";
import { html as worked, type RenderOptions } from "../../../src/render/index.js";
import type { Cell, Table } from "../../../src/render/section.js";
import { askedSteps, tell } from "../../../src/render/tell.js";
import { cellText, figureText } from "../../../src/render/typed.js";
import { unitLetters } from "../../../src/render/unit-letters.js";
import { type Html, html, markup, type Part } from "./html.js";
import { symbolHtml } from "./mathml.js";
import { pictureHtml } from "./picture-html.js";
import { capital, plainWords } from "./words.js";

/** A solution as a page shows it: the answers, then all of it worked out. */
export function outputHtml(run: AnyCallable, solution: Solution, options: RenderOptions): Html {
  return html`${answersHtml(solution, options)}${pictureHtml(run, solution)}${article(solution, { ...options, of: run })}${
    solution.parts.length > 0 && html`<details class="parts"><summary>The calculations behind it, worked: ${solution.parts.length}</summary>${solution.parts.map((part) => article(part, options))}</details>`
  }`;
}

/** A solution worked out, without its parts where they stand beside it. */
function article(solution: Solution, options: RenderOptions): Html {
  return markup(withClasses(worked(solution, { ...options, formulas: "symbols", style: false, parts: options.of === undefined })));
}

/** Tables that can be scrolled, and each section under a class of its title, so that what stands beside it already is left out. */
export function withClasses(text: string): string {
  const wide = text.replaceAll("<table>", '<div class="scroll"><table>').replaceAll("</table>", "</table></div>");
  return wide.replaceAll(/<section>\n<h(\d)>([A-Za-z ]+)<\/h\1>/g, (all, _, title: string) => all.replace("<section>", `<section class="of-${title.toLowerCase().replaceAll(" ", "-")}">`));
}

/** The answers of a solution: those that are asked first, then what leads to them. */
function answersHtml(solution: Solution, options: RenderOptions): Html {
  const [first] = answerTables(solution, options);
  if (first === undefined || !isList(first)) return html``;
  const asked = new Set(askedSteps(solution).map(({ says }) => says));
  const isAsked = ([name = []]: readonly Cell[]): boolean => asked.size === 0 || asked.has(cellText(name));
  const row = (cells: readonly Cell[]): Html => html`<div${isAsked(cells) && markup(' class="asked"')}><dt>${capital(cellText(cells[0] ?? []))}</dt>${valuesOf(first, cells).map((cell) => html`<dd${cellText(cell).length > 24 && markup(' class="long"')}>${cellHtml(cell)}</dd>`)}</div>`;
  return html`<dl class="answers">${[...first.rows.filter(isAsked), ...first.rows.filter((cells) => !isAsked(cells))].map(row)}</dl>`;
}

/** Whether a table is one of single answers, and not of records. */
function isList({ head }: Table): boolean {
  return head[0] === "what";
}

/** The tables among the blocks of a solution that tell what comes out. */
function answerTables(solution: Solution, options: RenderOptions): readonly Table[] {
  const given = new Set(["Asked", "Given", "Constants"]);
  return tell(solution, options).blocks.flatMap((block) => (block.kind === "table" && !given.has(block.title) ? [block] : []));
}

/** The figures of a row: without its name, and without its symbol where it has one. */
function valuesOf({ head }: Table, cells: readonly Cell[]): readonly Cell[] {
  return cells.slice(head[1] === "symbol" ? 2 : 1);
}

function cellHtml(cell: Cell): Part {
  return cell.map((one): Part => (typeof one === "string" ? wordHtml(one) : "symbol" in one ? symbolHtml(one.symbol) : figureText({ ...one, unit: unitLetters(one.unit) }).replaceAll(" ", "\u00a0")));
}

/** Words between figures; what governed stands smaller, and an equals sign is not needed in a list. */
function wordHtml(text: string): Part {
  if (text === "= ") return undefined;
  return text.startsWith(" (governed") ? html` <span class="governed">${plainWords(text.trim())}</span>` : text;
}

/** The answers in one sentence, to be read out: those that are asked. */
export function answersText(solution: Solution, options: RenderOptions): string {
  const asked = new Set(askedSteps(solution).map(({ says }) => says));
  const tables = answerTables(solution, options);
  const first = tables.find(isList);
  const others = tables.filter((table) => table !== first);
  const rows = (first?.rows ?? []).filter(([name = []]) => asked.size === 0 || asked.has(cellText(name))).slice(0, 6);
  const said = first === undefined ? [] : rows.map((cells) => `${cellText(cells[0] ?? [])}: ${valuesOf(first, cells).map((cell) => cellText(cell).replace(/^= /, "")).join(" or ")}`);
  return [...said, ...others.map(({ title, rows: body }) => `${title}: ${String(body.length)} rows`)].join("; ");
}
