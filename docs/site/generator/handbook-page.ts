import { answersSchemaOf } from "../../../src/answers/index.js";
import { escaped, html, type Html, markup, type Part } from "../shared/html.js";
import { entriesOf } from "../shared/inputs.js";
import { outputHtml } from "../shared/solution-html.js";
import { capital, plainWords } from "../shared/words.js";
import { checkSection, stateText } from "./check-section.js";
import { fieldsHtml } from "./form.js";
import { formulaSection } from "./formula-section.js";
import type { Listed } from "./listed.js";
import { inlineMarkdown } from "./markdown.js";
import { practiceSection } from "./practice-section.js";
import { schemaTable } from "./schema-table.js";
import { type Page, toTop } from "./shell.js";

/** The page of a calculation or a composed function. */
export function handbookPage(listed: Listed, pages: ReadonlyMap<string, Listed>): Page {
  const { title, says, topic, page } = listed;
  return {
    page,
    title,
    says,
    under: "handbook/index.html",
    body: html`<p class="crumbs"><a href="../index.html">Handbook</a> / <a href="../index.html#${topic}">${capital(plainWords(topic))}</a></p>
<h1>${title}</h1>
<p class="lead">${markup(inlineMarkdown(says))}</p>
<p class="state"><a href="#checks">Check values: ${stateText(listed.checks)}</a></p>
${panel(listed)}
${formulaSection(listed)}
${practiceSection(listed)}
${codeSection(listed)}
${checkSection(listed)}
${relations(listed, pages)}`,
  };
}

/** The form and what comes out; the example is worked out already, so that a reader without scripts sees it. */
function panel(listed: Listed): Html {
  const { id, example, solution, run } = listed;
  const isNested = entriesOf(run) === undefined;
  return html`<section class="panel" id="panel" aria-labelledby="panel-title" data-id="${id}" data-example="${markup(escaped(JSON.stringify(example.input)))}"${isNested && markup(' data-nested="true"')}>
<h2 id="panel-title">Work it out</h2>
<noscript><p class="note">The form needs the page's script; without it the example stands here worked out.</p></noscript>
<form id="inputs" novalidate>
<div class="fields">${fieldsHtml(listed)}</div>
<div class="actions">
<button type="submit" disabled>Work it out</button>
<button type="button" id="again" class="plain" disabled>Back to the example</button>
<label class="reading" for="reading">Answers in <select id="reading" disabled><option value="">the units given</option><option value="us">United States units</option><option value="si">SI units</option><option value="both">both</option></select></label>
</div>
</form>
<p id="said" class="unseen" role="status"></p>
<div id="refused" class="refused" tabindex="-1" hidden></div>
<section class="output" aria-labelledby="output-title">
<h2 id="output-title">Answer</h2>
<div id="output">${outputHtml(run, solution, {})}</div>
<p class="share"><a id="link" href="#panel">Link to these inputs</a> <button type="button" id="print" class="plain" disabled>Print this sheet</button></p>
</section>
</section>`;
}

function codeSection({ name, entry, example, run, definition }: Listed): Html {
  return html`<section class="in-code" aria-labelledby="in-code-title"><h2 id="in-code-title">In code</h2>
<pre class="code"><code>import { ${name} } from "${entry}";

${example.code}</code></pre><p class="note">This example is run whenever the site is built; the comments are what comes out.</p>${definition === undefined && html`<details><summary>What it answers</summary>${schemaTable(answersSchemaOf(run))}</details>`}</section>`;
}

/** The calculations that it runs. */
function relations({ solution, page, id }: Listed, pages: ReadonlyMap<string, Listed>): Part {
  const runs = [...new Set(solution.parts.map((part) => part.id))].flatMap((one) => pages.get(one) ?? []);
  const usedBy = [...pages.values()].filter((other) => other.solution.parts.some((part) => part.id === id));
  const links = (title: string, of: readonly Listed[]): Part => of.length > 0 && html`<p>${title}: ${of.map((other, index) => html`${index > 0 && ", "}<a href="${toTop(page)}${other.page}">${other.title}</a>`)}.</p>`;
  return runs.length + usedBy.length > 0 && html`<section class="relations" aria-labelledby="relations-title"><h2 id="relations-title">Beside it</h2>${links("It runs", runs)}${links("It is run by", usedBy)}</section>`;
}
