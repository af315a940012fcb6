import { type Html, html } from "../shared/html.js";
import { capital, plainWords } from "../shared/words.js";
import type { Guide } from "./guide-pages.js";
import { byTopic } from "./handbook-index.js";
import type { Listed } from "./listed.js";
import type { Page } from "./shell.js";

/** Pages to begin with: what most are asked for. A link that leads nowhere fails the look at the site. */
const starts = [
  ["takeoff/take-off", "The order list of a wall"],
  ["boards/board-layout", "Boards on a wall, drawn"],
  ["film/coating-order", "Pails of a coating"],
  ["joints/coursed-face", "Mortar for the joints"],
  ["weather/dew-point", "Dew point"],
] as const;

/** The guides that say why an answer can be trusted, and not how to get one. */
const why = new Set(["exact-counts", "where-numbers-come-from", "report-a-wrong-figure", "fast-counts", "how-fast"].map((name) => `guide/${name}.html`));

const guideLink = ({ page, title }: Guide): Html => html`<li><a href="${page}">${title}</a></li>`;

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
<section aria-labelledby="to-compute"><h2 id="to-compute">Work something out</h2><p>Change the figures, print the sheet. It runs in your browser; nothing is sent anywhere.</p><ul>${starts.map(([to, title]) => html`<li><a href="handbook/${to}.html">${title}</a></li>`)}<li><a href="handbook/index.html">All calculations</a></li></ul></section>
<section aria-labelledby="to-read"><h2 id="to-read">Read a guide</h2><ul>${guides.filter(({ page }) => !why.has(page)).map(guideLink)}</ul></section>
<section aria-labelledby="to-check"><h2 id="to-check">Check us</h2><ul>${guides.filter(({ page }) => why.has(page)).map(guideLink)}<li><a href="coverage.html">What each calculation is checked against</a></li><li><a href="sources.html">Sources</a>, <a href="units.html">units</a> and <a href="glossary.html">words</a></li></ul></section>
</div>
<h2>By topic</h2><ul class="list">${first}</ul>`,
  };
}
