import type { DimensionName } from "../../../src/core/dimensions.js";
import { allUnits, type Unit, unitSymbol } from "../../../src/core/units.js";
import { html, type Html } from "../shared/html.js";
import { capital, plainWords } from "../shared/words.js";
import type { Page } from "./shell.js";

/** Every unit that can be written, with what it is equal to. */
export function unitsPage(): Page {
  const dimensions = new Map<DimensionName, Unit[]>();
  for (const unit of allUnits()) dimensions.set(unit.of, [...(dimensions.get(unit.of) ?? []), unit]);
  return {
    page: "units.html",
    title: "Units",
    says: "Every unit that can be written, with what it is equal to and how else it is spelt.",
    body: html`<h1>Units</h1>
<p class="lead">Write a number and its unit: <code>3/8 in</code>, <code>5 ft 6-3/8 in</code>, <code>18 mil</code>, <code>12.5 m2</code>, <code>70 degF</code>. Factors are exact; an inch is 25.4 mm. Gallons, pints and fluid ounces are those of the United States.</p>
<p>Other cases, plurals, <code>sq ft</code>, <code>ft²</code>, <code>per</code> and points after an abbreviation are read too. A number with a comma is refused, since the comma is a decimal sign to half the world.</p>
${[...dimensions].map(([dimension, of]) => section(dimension, of))}`,
  };
}

const systems = { us: "United States", si: "SI", both: "both" } as const;

function section(dimension: DimensionName, of: readonly Unit[]): Html {
  return html`<section aria-labelledby="${dimension}"><h2 id="${dimension}">${capital(plainWords(dimension))}</h2><div class="scroll"><table><thead><tr><th scope="col">unit</th><th scope="col">is</th><th scope="col">also written</th><th scope="col">system</th></tr></thead><tbody>${of.map(
    ({ code, is, spellings, system }) => html`<tr><th scope="row"><code>${unitSymbol(code) === "" ? "a bare number" : unitSymbol(code)}</code></th><td>${is}</td><td>${spellings.join(", ")}</td><td>${systems[system]}</td></tr>`,
  )}</tbody></table></div></section>`;
}
