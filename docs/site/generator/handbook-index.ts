import { html, type Html } from "../shared/html.js";
import { capital, plainWords, several } from "../shared/words.js";
import type { Listed } from "./listed.js";
import { type Page, toTop } from "./shell.js";

/** The topics in alphabetical order, each with its calculations. */
export function byTopic(all: readonly Listed[]): ReadonlyMap<string, readonly Listed[]> {
  const topics = new Map<string, Listed[]>();
  for (const listed of all) topics.set(listed.topic, [...(topics.get(listed.topic) ?? []), listed]);
  return topics;
}

/** The first sentence. */
function sentence(text: string): string {
  const [first = text] = /^.*?[^.]\.(?= |$)/.exec(text) ?? [];
  return first.replaceAll("`", "");
}

/** The list of all pages of the handbook. */
export function handbookIndex(all: readonly Listed[]): Page {
  const page = "handbook/index.html";
  const topics = [...byTopic(all)];
  const item = (listed: Listed): Html => html`<li><a href="${toTop(page)}${listed.page}">${listed.title}</a><p>${sentence(listed.says)}</p></li>`;
  return {
    page,
    title: "Handbook",
    says: "Every calculation with its formula, its sources, a worked example and a form that computes.",
    body: html`<h1>Handbook</h1>
<p class="lead">${several(all.length, "calculation")}, each with its formula, its sources, a worked example and a form that runs the package in your browser.</p>
<nav aria-label="Topics"><ul class="topics">${topics.map(([topic, of]) => html`<li><a href="#${topic}">${capital(plainWords(topic))}</a> <span class="count">${of.length}</span></li>`)}</ul></nav>
${topics.map(([topic, of]) => html`<section aria-labelledby="${topic}"><h2 id="${topic}">${capital(plainWords(topic))}</h2><ul class="list">${of.map(item)}</ul></section>`)}`,
  };
}

