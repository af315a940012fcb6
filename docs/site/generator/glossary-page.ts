import { html, type Html } from "../shared/html.js";
import { entriesOf } from "../shared/inputs.js";
import { capital, plainWords, several } from "../shared/words.js";
import type { Listed } from "./listed.js";
import type { Page } from "./shell.js";

/** A word with what it means in one or several calculations. */
interface Term {
  readonly name: string;
  readonly kinds: Set<string>;
  readonly meanings: Map<string, Listed[]>;
}

/** Every name of an input, a constant or an answer, with what it means and where. */
export function glossaryPage(all: readonly Listed[]): Page {
  const terms = new Map<string, Term>();
  const add = (name: string, kind: string, says: string, listed: Listed): void => {
    const term: Term = terms.get(name) ?? { name, kinds: new Set(), meanings: new Map() };
    term.kinds.add(kind);
    term.meanings.set(says, [...(term.meanings.get(says) ?? []), listed]);
    terms.set(name, term);
  };
  for (const listed of all) {
    const { definition, run } = listed;
    for (const [name, row] of Object.entries(entriesOf(run) ?? {})) add(name, "oneOf" in row ? "choice" : plainWords(row.is), row.says, listed);
    for (const [name, row] of Object.entries({ ...definition?.constants, ...definition?.steps })) add(name, plainWords(row.is), row.says ?? "", listed);
  }
  const letters = new Map<string, Term[]>();
  for (const term of [...terms.values()].sort((one, other) => plainWords(one.name).localeCompare(plainWords(other.name)))) {
    const letter = term.name.charAt(0).toUpperCase();
    letters.set(letter, [...(letters.get(letter) ?? []), term]);
  }
  return {
    page: "glossary.html",
    title: "Glossary",
    says: "Every name of an input or an answer, with what it means and where it is used.",
    body: html`<h1>Glossary</h1><p class="lead">${several(terms.size, "name")} of inputs, constants and answers, as formulas and code write them. One word stands for one quantity; what is meant on a page is told there.</p>
<nav aria-label="Letters"><ul class="topics">${[...letters.keys()].map((letter) => html`<li><a href="#letter-${letter}">${letter}</a></li>`)}</ul></nav>
${[...letters].map(([letter, of]) => html`<section aria-labelledby="letter-${letter}"><h2 id="letter-${letter}">${letter}</h2><dl class="terms">${of.map(termHtml)}</dl></section>`)}`,
  };
}

function termHtml({ name, kinds, meanings }: Term): Html {
  const pages = (of: readonly Listed[]): Html => html`${of.slice(0, 4).map(({ page, title }, index) => html`${index > 0 && ", "}<a href="${page}">${title}</a>`)}${of.length > 4 && ` and ${String(of.length - 4)} more`}`;
  const says = (text: string): string => (text === "" ? capital(plainWords(name)) : capital(text));
  return html`<div><dt>${plainWords(name)} <code>${name}</code> <span class="kind">${[...kinds].join(" or ")}</span></dt>${[...meanings].map(([text, of]) => html`<dd>${says(text)} <span class="where">${pages(of)}</span></dd>`)}</div>`;
}
