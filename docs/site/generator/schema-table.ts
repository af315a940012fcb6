import type { JsonSchema } from "../../../src/schema/index.js";
import { type Html, html } from "../shared/html.js";
import { schemaRows } from "./schema-rows.js";

/** Nested input or answers as a table: each place, what stands there, and whether it must. */
export function schemaTable(schema: JsonSchema): Html {
  const rows = schemaRows(schema).map(({ path, titles, kinds, isNeeded }) => {
    const what = [titles.join(", or "), kinds.join(", or ")].filter((text) => text !== "").join("; ");
    return html`<tr><th scope="row"><code>${path}</code></th><td>${what}</td><td>${isNeeded ? "yes" : ""}</td></tr>`;
  });
  return html`<div class="scroll"><table><thead><tr><th scope="col">place</th><th scope="col">what</th><th scope="col">always</th></tr></thead><tbody>${rows}</tbody></table></div>`;
}
