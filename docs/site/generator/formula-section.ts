import { basisText } from "../../../src/core/basis.js";
import type { StepDefinition } from "../../../src/core/definition.js";
import { formulaText, parseFormula } from "../../../src/core/formula.js";
import { spaced } from "../../../src/core/spaced.js";
import { type Html, html, type Part } from "../shared/html.js";
import { equationHtml, symbolHtml } from "../shared/mathml.js";
import { capital, plainWords } from "../shared/words.js";
import type { Listed } from "./listed.js";

/** The steps of a calculation with their formulas, constants and what they stand on. */
export function formulaSection({ definition }: Listed): Part {
  if (definition === undefined) return undefined;
  const symbols = new Map(Object.entries({ ...definition.given, ...definition.constants, ...definition.steps }).map(([name, { symbol }]) => [name, symbol]));
  const constants = Object.entries(definition.constants ?? {});
  return html`<section class="formulas" aria-labelledby="formulas-title"><h2 id="formulas-title">The formulas</h2>
<ol class="steps">${Object.entries(definition.steps).map(([name, step]) => stepHtml(name, step, symbols))}</ol>
${constants.length > 0 && html`<h3>Constants</h3><dl class="constants">${constants.map(([name, { symbol, value, says, basis }]) => html`<div><dt>${symbolHtml(symbol)} = ${String(value)} <code>${name}</code></dt><dd>${capital(says)}. <span class="basis">${basisText(basis)}</span></dd></div>`)}</dl>`}
<h3>What the letters stand for</h3>
<dl class="letters">${Object.entries(definition.given).map(([name, { symbol, says, is }]) => html`<div><dt>${symbolHtml(symbol)} <code>${name}</code></dt><dd>${says} (${plainWords(is)})</dd></div>`)}</dl></section>`;
}

function stepHtml(name: string, step: StepDefinition, symbols: ReadonlyMap<string, string>): Html {
  const formulas = typeof step.formula === "string" ? [["", step.formula] as const] : Object.entries(step.formula);
  return html`<li><p>${capital(step.says ?? spaced(name))}</p>${formulas.map(([input, text]) => {
    const formula = parseFormula(text);
    const words = `${name} = ${formulaText(formula)}`;
    return html`${input !== "" && html`<p class="note">Where <code>${input}</code> is given:</p>`}<div class="scroll">${equationHtml(step.symbol, formula, (one) => symbols.get(one) ?? one, words)}</div><p class="words"><code>${words}</code></p>`;
  })}<p class="basis">${basisText(step.basis)}</p>${step.differs !== undefined && html`<p class="note">Departs from its source: ${step.differs}</p>`}</li>`;
}
