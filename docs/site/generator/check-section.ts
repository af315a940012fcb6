import { type Html, html } from "../shared/html.js";
import type { Vector } from "../../../tests/support/vectors.js";
import type { Checks } from "./checks.js";
import type { Listed } from "./listed.js";

/** What each state means, for a reader. */
export const states: Readonly<Record<Checks["state"], string>> = {
  published: "Figures printed in a source outside the project are in its tests.",
  "derived by hand": "Its tests hold figures worked out by hand, or by a program of others, under the rule named; none that is printed.",
  "none yet": "No figure from outside stands beside it yet. Its tests hold limits, edges and figures that follow from its geometry.",
};

/** The state of the check values in a few words. */
export function stateText({ state, rows }: Checks): string {
  return rows.length === 0 ? state : `${state}, ${String(rows.length)} in the tests`;
}

/** A source as one line. */
export function sourceText({ source: { publisher, title, edition, locator } }: Vector): string {
  return [publisher, title, edition, locator].filter((part) => part !== "").join(", ");
}

const known: Readonly<Record<Vector["knownBy"], string>> = { read: "read in the source", secondary: "as another text quotes it", computed: "computed under the rule of the source" };

/** The check values of a calculation as its tests have them, as printed. */
export function checkSection({ checks: { state, rows } }: Listed): Html {
  const values = (of: Readonly<Record<string, string>>): Html => html`<ul>${Object.entries(of).map(([name, value]) => html`<li><span class="key">${name.replaceAll("_", " ")}</span> ${value}</li>`)}</ul>`;
  return html`<section class="checks" id="checks" aria-labelledby="checks-title"><h2 id="checks-title">Check values: ${state}</h2><p>${states[state]}</p>
${rows.length > 0 && html`<details><summary>As printed, ${rows.length} in the tests</summary><div class="scroll"><table><thead><tr><th scope="col">what</th><th scope="col">given</th><th scope="col">printed</th><th scope="col">source</th></tr></thead>
<tbody>${rows.map((row) => html`<tr><th scope="row">${row.what}${row.misprint === true && html` <strong>(a misprint: shows a disagreement)</strong>`}</th><td>${values(row.inputs)}</td><td>${values(row.expected)}</td><td>${sourceText(row)}; ${known[row.knownBy]}</td></tr>`)}</tbody></table></div></details>`}</section>`;
}
