import { type Basis, basisText } from "../../../src/core/basis.js";
import type { Solution } from "../../../src/core/solution.js";
import { html, type Html, type Part } from "../shared/html.js";
import { entriesOf } from "../shared/inputs.js";
import { capital, several } from "../shared/words.js";
import type { Listed } from "./listed.js";
import type { Page } from "./shell.js";

const kinds: Readonly<Record<Basis["kind"], string>> = {
  published: "Printed in a source that is named, with its edition and the place in it. Where the source itself was not seen, it says who quotes it.",
  definition: "Exact by definition.",
  derived: "Geometry, statics or arithmetic that a reader can follow.",
  "common practice": "A fact of the trade, without a source.",
  "from memory": "Recalled and not seen. Nothing is checked against it.",
};

/** What the formulas, constants and defaults stand on, and where each is used. */
export function sourcesPage(all: readonly Listed[]): Page {
  const found = new Map<string, { readonly basis: Basis; readonly of: Set<Listed> }>();
  for (const listed of all) {
    for (const basis of basesOf(listed)) {
      const text = basisText(basis);
      const known = found.get(text) ?? { basis, of: new Set() };
      known.of.add(listed);
      found.set(text, known);
    }
  }
  const rows = [...found].sort(([one], [other]) => one.localeCompare(other));
  return {
    page: "sources.html",
    title: "Sources",
    says: "What every formula, constant and default stands on, and where it is used.",
    body: html`<h1>Sources</h1><p class="lead">Every formula, constant and default says what it stands on. Here they are together, with the pages that use them.</p>
${(Object.keys(kinds) as Basis["kind"][]).map((kind) => group(kind, rows.filter(([, { basis }]) => basis.kind === kind)))}`,
  };
}

type Row = readonly [text: string, row: { readonly basis: Basis; readonly of: ReadonlySet<Listed> }];

function group(kind: Basis["kind"], rows: readonly Row[]): Part {
  const users = (of: ReadonlySet<Listed>): Html => {
    const links = html`${[...of].map(({ page, title }, index) => html`${index > 0 && ", "}<a href="${page}">${title}</a>`)}`;
    return of.size > 6 ? html`<details><summary>${several(of.size, "page")}</summary><p>${links}</p></details>` : html`<p>${links}</p>`;
  };
  return rows.length > 0 && html`<section aria-labelledby="${kind.replaceAll(" ", "-")}"><h2 id="${kind.replaceAll(" ", "-")}">${capital(kind)}</h2><p>${kinds[kind]}</p><ul class="sources">${rows.map(([text, { basis, of }]) => html`<li><p>${basis.kind === "published" ? text : capital(basis.says)}</p>${users(of)}</li>`)}</ul></section>`;
}

/** All bases that a definition names, and those of the example worked out. */
function basesOf({ run, definition, solution }: Listed): readonly Basis[] {
  const rows = [entriesOf(run), definition?.constants, definition?.steps].flatMap((one) => Object.values<{ readonly basis?: Basis }>(one ?? {}));
  return [...rows.flatMap(({ basis }) => (basis === undefined ? [] : [basis])), ...ownBases(solution, definition === undefined)];
}

/** What a composed function stands on besides what its parts do. */
function ownBases({ bases, parts }: Solution, isComposed: boolean): readonly Basis[] {
  const ofParts = new Set(parts.flatMap((part) => part.bases).map(basisText));
  return isComposed ? bases.filter((basis) => !ofParts.has(basisText(basis))) : bases;
}
