import { vectorUse } from "../../../tests/support/vectors.js";
import { html, type Html } from "../shared/html.js";
import { capital, plainWords, several } from "../shared/words.js";
import { sourceText, states } from "./check-section.js";
import type { Checks } from "./checks.js";
import { byTopic } from "./handbook-index.js";
import type { Listed } from "./listed.js";
import type { Page } from "./shell.js";

/** Which calculation is checked against what from outside, and which printed figures no test uses. */
export function coveragePage(all: readonly Listed[]): Page {
  const { used, unused, notUsedWithReason } = vectorUse();
  const count = (state: Checks["state"]): number => all.filter(({ checks }) => checks.state === state).length;
  const reasons = Object.entries(notUsedWithReason);
  return {
    page: "coverage.html",
    title: "Checked against",
    says: "Which calculation is checked against figures from outside, and which has none yet.",
    body: html`<h1>What the answers are checked against</h1>
<p class="lead">A test that holds our own output proves nothing. So every calculation says whether a figure from outside stands beside it.</p>
<dl class="counts">${(Object.keys(states) as Checks["state"][]).map((state) => html`<div><dt>${capital(state)}</dt><dd><strong>${count(state)}</strong> of ${all.length}. ${states[state]}</dd></div>`)}</dl>
<p>The formulas of all of them are besides run by an engine of others (mathjs, with units) on drawn inputs, and must agree.</p>
${[...byTopic(all)].map(([topic, of]) => table(topic, of))}
<h2>Printed figures in the tests</h2><p>${several(used.length, "row")} of printed figures are used by tests. ${reasons.length > 0 && html`${several(reasons.length, "row is", "rows are")} kept and not used, for the reason given. `}${unused.length > 0 && html`${several(unused.length, "row waits", "rows wait")} for a calculation.`}</p>
${reasons.length > 0 && html`<details><summary>Not used, and why</summary><dl class="letters">${reasons.map(([id, why]) => html`<div><dt><code>${id}</code></dt><dd>${why}</dd></div>`)}</dl></details>`}
${unused.length > 0 && html`<details><summary>Waiting</summary><p class="ids">${unused.map((id, index) => html`${index > 0 && ", "}<code>${id}</code>`)}</p></details>`}`,
  };
}

function table(topic: string, of: readonly Listed[]): Html {
  const from = ({ checks: { rows } }: Listed): string => {
    const publishers = [...new Set(rows.map((row) => sourceText({ ...row, source: { ...row.source, edition: "", locator: "" } })))];
    return publishers.length > 3 ? `${publishers.slice(0, 3).join("; ")}; and ${String(publishers.length - 3)} more` : publishers.join("; ");
  };
  return html`<section aria-labelledby="${topic}"><h2 id="${topic}">${capital(plainWords(topic))}</h2><div class="scroll"><table class="coverage"><thead><tr><th scope="col">calculation</th><th scope="col">check values</th><th scope="col">from</th></tr></thead><tbody>${of.map(
    (listed) => html`<tr><th scope="row"><a href="${listed.page}">${listed.title}</a></th><td><span class="mark ${listed.checks.state.replaceAll(" ", "-")}">${listed.checks.state}</span></td><td>${from(listed)}</td></tr>`,
  )}</tbody></table></div></section>`;
}
