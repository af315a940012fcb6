import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { html, markup } from "../shared/html.js";
import { readGuide } from "./markdown.js";
import type { Page } from "./shell.js";

/** A guide written by hand. */
export interface Guide extends Page {
  readonly headings: readonly string[];
}

/** In this order; what is not named here comes after. */
const order = ["first-estimate", "your-own-sheet", "in-an-app", "in-another-language", "in-a-class", "exact-counts", "where-numbers-come-from", "your-own-calculation", "report-a-wrong-figure"];

/** The guides of docs/guide as pages. */
export function guidePages(): readonly Guide[] {
  const folder = path.resolve(import.meta.dirname, "../../guide");
  const place = (file: string): number => (order.includes(file) ? order.indexOf(file) : order.length);
  const names = readdirSync(folder).filter((file) => file.endsWith(".md")).map((file) => file.slice(0, -".md".length));
  return names.sort((one, other) => place(one) - place(other) || one.localeCompare(other)).map((name): Guide => {
    const { title, says, markup: written, headings } = readGuide(readFileSync(path.join(folder, `${name}.md`), "utf8"));
    const contents = headings.length > 2 && html`<nav class="contents" aria-label="On this page"><ul>${headings.map(({ id, text }) => html`<li><a href="#${id}">${text}</a></li>`)}</ul></nav>`;
    return { page: `guide/${name}.html`, title, says, under: "guide/index.html", headings: headings.map(({ text }) => text), body: html`<p class="crumbs"><a href="index.html">Guides</a></p><article class="guide">${contents}${markup(written)}</article>` };
  });
}

/** The list of guides. */
export function guideIndex(guides: readonly Guide[]): Page {
  return {
    page: "guide/index.html",
    title: "Guides",
    says: "Short guides for estimators, developers and teachers.",
    body: html`<h1>Guides</h1><ul class="list">${guides.map(({ page, title, says }) => html`<li><a href="../${page}">${title}</a><p>${says}</p></li>`)}</ul>`,
  };
}
