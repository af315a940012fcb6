import { html } from "../shared/html.js";
import { capital, plainWords } from "../shared/words.js";
import type { Guide } from "./guide-pages.js";
import { byTopic } from "./handbook-index.js";
import type { Listed } from "./listed.js";
import type { Page } from "./shell.js";

/** The first page: what this is, where to begin. */
export function homePage(all: readonly Listed[], guides: readonly Guide[]): Page {
  const topics = [...byTopic(all)];
  const first = topics.map(([topic, of]) => html`<li><a href="handbook/index.html#${topic}">${capital(plainWords(topic))}</a><p>${of.slice(0, 3).map(({ title }) => title).join(" · ")}${of.length > 3 && " …"}</p></li>`);
  return {
    page: "index.html",
    title: "settingbed",
    says: "Trade calculations for adhered stone veneer on framed walls, with units, sources and every step shown.",
    body: html`<h1>Figures for a wall of adhered stone</h1>
<p class="lead">How many boards, screws, pails, bags, units and corners; how much water; how thick, how long, how heavy, how far apart. Each answer with its unit, its source and its working. Counts are exact.</p>
<div class="doors">
<section aria-labelledby="to-compute"><h2 id="to-compute">Work something out</h2><p>Open a page of the <a href="handbook/index.html">handbook</a>, change the figures, print the sheet. It runs in your browser; nothing is sent anywhere.</p></section>
<section aria-labelledby="to-read"><h2 id="to-read">Read a guide</h2><ul>${guides.map(({ page, title }) => html`<li><a href="${page}">${title}</a></li>`)}</ul></section>
<section aria-labelledby="to-check"><h2 id="to-check">Check us</h2><p>See <a href="coverage.html">what each calculation is checked against</a>, the <a href="sources.html">sources</a>, the <a href="units.html">units</a> and the <a href="glossary.html">words</a>.</p></section>
</div>
<h2>By topic</h2><ul class="list">${first}</ul>`,
  };
}
