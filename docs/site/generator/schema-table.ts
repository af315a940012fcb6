import type { AnyCallable } from "../../../src/core/callable.js";
import { type JsonSchema, jsonSchemaOf } from "../../../src/schema/index.js";
import { type Html, html } from "../shared/html.js";

interface SchemaRow {
  readonly path: string;
  readonly what: string;
  readonly isNeeded: boolean;
}

/** Nested input as a table: each place in it, what stands there, and whether it must. */
export function schemaTable(run: AnyCallable): Html {
  const rows = rowsOf(jsonSchemaOf(run), "", true);
  return html`<div class="scroll"><table><thead><tr><th scope="col">place</th><th scope="col">what</th><th scope="col">needed</th></tr></thead><tbody>${rows.map(
    ({ path, what, isNeeded }) => html`<tr><th scope="row"><code>${path}</code></th><td>${what}</td><td>${isNeeded ? "yes" : ""}</td></tr>`,
  )}</tbody></table></div>`;
}

const alternatives = (schema: JsonSchema): readonly JsonSchema[] => (schema.oneOf ?? schema.anyOf ?? []) as readonly JsonSchema[];

function rowsOf(schema: JsonSchema, path: string, isNeeded: boolean): readonly SchemaRow[] {
  const { properties, items, prefixItems, additionalProperties, title, description, enum: words, const: word } = schema as {
    readonly properties?: Readonly<Record<string, JsonSchema>>;
    readonly items?: JsonSchema;
    readonly prefixItems?: readonly JsonSchema[];
    readonly additionalProperties?: JsonSchema | false;
    readonly title?: string;
    readonly description?: string;
    readonly const?: string | number | boolean;
    readonly enum?: readonly (string | number | boolean)[];
  };
  const own = (what: string): readonly SchemaRow[] => (path === "" ? [] : [{ path, what, isNeeded }]);
  // A quantity has a title; its ways of being written are the same everywhere.
  if (title !== undefined && path !== "") return own([title, description].filter((text) => text !== undefined).join("; "));
  if (words !== undefined) return own(words.map(String).join(", "));
  if (word !== undefined) return own(String(word));
  if (properties !== undefined) {
    const required = (schema.required ?? []) as readonly string[];
    return [...own("an object"), ...Object.entries(properties).flatMap(([name, inner]) => rowsOf(inner, path === "" ? name : `${path}.${name}`, required.includes(name)))];
  }
  if (prefixItems !== undefined) return [...own("a list"), ...prefixItems.flatMap((inner, index) => rowsOf(inner, `${path}[${String(index)}]`, true))];
  if (items !== undefined) return [...own("a list"), ...rowsOf(items, `${path}[]`, true)];
  if (typeof additionalProperties === "object") return [...own("an object by name"), ...rowsOf(additionalProperties, `${path}.*`, false)];
  const others = alternatives(schema);
  if (others.length > 0) return [...(others.every((one) => one.properties === undefined) ? [] : own("one of these")), ...merged(others, path, isNeeded)];
  return own(typeof schema.type === "string" ? `a ${schema.type}` : "");
}

/** The rows of all alternatives, each place once. */
function merged(others: readonly JsonSchema[], path: string, isNeeded: boolean): readonly SchemaRow[] {
  const rows = new Map<string, SchemaRow>();
  for (const row of others.flatMap((other) => rowsOf(other, path, isNeeded).filter((one) => one.path !== path || other.properties === undefined))) {
    const known = rows.get(row.path);
    const what = known === undefined ? row.what : known.what.split(", or ").includes(row.what) ? known.what : `${known.what}, or ${row.what}`;
    rows.set(row.path, { ...row, what, isNeeded: row.isNeeded && known === undefined ? isNeeded : row.isNeeded && known?.isNeeded === true });
  }
  return [...rows.values()];
}
