import { basisText } from "../../../src/core/basis.js";
import type { EntryDefinition, GivenDefinition } from "../../../src/core/definition.js";
import { type UnitCode, unitsOf, unitSymbol } from "../../../src/core/units.js";
import { jsonSchemaOf } from "../../../src/schema/index.js";
import { type Html, html, markup, type Part } from "../shared/html.js";
import { entriesOf, fieldId } from "../shared/inputs.js";
import { capital, plainWords } from "../shared/words.js";
import { symbolHtml } from "../shared/mathml.js";
import type { Listed } from "./listed.js";
import { schemaTable } from "./schema-table.js";

/** The fields of a calculation, filled with its example. */
export function fieldsHtml(listed: Listed): Html {
  const entries = entriesOf(listed.run);
  if (entries === undefined) return nestedField(listed);
  const example = listed.example.input as Readonly<Record<string, unknown>>;
  const pairs = [...new Set(Object.values(entries).flatMap(({ either }) => (either === undefined ? [] : [either])))];
  const told = new Set<string>();
  const field = (name: string, row: EntryDefinition): Part => fieldHtml(name, row, example[name]);
  return html`${Object.entries(entries).map(([name, row]): Part => {
    const { either } = row;
    if (either === undefined) return field(name, row);
    if (!pairs.includes(either) || told.has(either)) return undefined;
    told.add(either);
    const members = Object.entries(entries).filter(([, other]) => other.either === either);
    return html`<fieldset class="pair" data-pair="${either}" aria-describedby="pair-${either}-problem"><legend>${capital(plainWords(either))}: one of these</legend>
${members.map(([own, other]) => field(own, other))}<p class="problem" id="pair-${either}-problem" hidden></p></fieldset>`;
  })}`;
}

function fieldHtml(name: string, row: EntryDefinition, value: unknown): Html {
  const id = fieldId(name);
  const symbol = "oneOf" in row ? undefined : html` <span class="symbol">${symbolHtml(row.symbol)}</span>`;
  const hint = [...("oneOf" in row ? [] : [unitHint(row)]), ...limitHints(row), ...emptyHint(row)].filter((text) => text !== "").join("; ");
  const described = markup(` aria-describedby="${hint === "" ? "" : `${id}-hint `}${id}-problem"`);
  const isNeeded = row.default === undefined && row.either === undefined && row.optional !== true;
  const shown = typeof value === "object" ? pairText(value as { value: string | number; unit: string }) : typeof value === "string" || typeof value === "number" ? String(value) : "";
  return html`<div class="field"><label for="${id}">${capital(row.says)}${symbol}</label>
${"oneOf" in row ? choiceHtml(name, row.oneOf, row.default, isNeeded, value, described) : html`<input id="${id}" name="${name}" type="text" value="${shown}" autocomplete="off" autocapitalize="off" spellcheck="false"${isNeeded && markup(" required")}${described}>`}
${hint !== "" && html`<p class="hint" id="${id}-hint">${capital(hint)}</p>`}<p class="problem" id="${id}-problem" hidden></p></div>`;
}

const pairText = ({ value, unit }: { readonly value: string | number; readonly unit: string }): string => `${String(value)} ${unit}`;

function choiceHtml(name: string, of: readonly (string | number | boolean)[], fallback: unknown, isNeeded: boolean, value: unknown, described: Html): Html {
  const words = (one: unknown): string => (one === true ? "yes" : one === false ? "no" : String(one));
  const left = fallback === undefined ? "left out" : `as usual: ${words(fallback)}`;
  return html`<select id="${fieldId(name)}" name="${name}"${isNeeded && markup(" required")}${described}>
${(!isNeeded || value === undefined) && html`<option value="">${isNeeded ? "choose" : left}</option>`}${of.map((one) => html`<option value="${String(one)}"${one === value && markup(" selected")}>${words(one)}</option>`)}
</select>`;
}

/** In which units it is written, the usual ones first. */
export function unitHint(row: GivenDefinition): string {
  const { is, unit } = row;
  if (is === "count") return "whole" in row ? "a whole count" : "a count";
  if (is === "ratio") return 'a share, such as "15 %" or 0.15';
  const usual = unit === undefined ? [] : [unit].flat();
  const all = [...new Set([...usual, ...unitsOf(is)].map((code) => unitSymbol(code as UnitCode)))];
  const shown = all.slice(0, Math.max(usual.length, 2));
  return `${plainWords(is)}: ${shown.join(", ")}${all.length > shown.length ? " or another unit" : ""}`;
}

/** The limits in words. */
export function limitHints(row: EntryDefinition): readonly string[] {
  if ("oneOf" in row) return [];
  const kinds = { above: "above", atLeast: "at least", below: "below", atMost: "at most" } as const;
  const told = (Object.keys(kinds) as (keyof typeof kinds)[]).flatMap((key) => (row[key] === undefined ? [] : [`${kinds[key]} ${String(row[key])}`]));
  return told.length === 0 ? [] : [told.join(" and ")];
}

function emptyHint(row: EntryDefinition): readonly string[] {
  if (row.default !== undefined) return [`left empty it is taken as ${String(row.default)} (${basisText(row.basis)})`];
  return row.optional === true ? ["may be left empty"] : [];
}

/** Nested input is written as JSON. */
function nestedField({ run, example }: Listed): Html {
  const text = JSON.stringify(example.input, undefined, 2).replace(/\{\n\s+([^{}[\]]{1,90}?)\n\s+\}/g, (_, inner: string) => `{ ${inner.replaceAll(/\n\s+/g, " ")} }`);
  return html`<div class="field whole"><label for="in-input">The input as JSON</label>
<textarea id="in-input" name="input" rows="${Math.min(24, text.split("\n").length + 1)}" spellcheck="false" autocapitalize="off" aria-describedby="in-input-hint in-input-problem">${text}</textarea>
<p class="hint" id="in-input-hint">Quantities are texts with their units, such as "3/8 in" or "12 m2". What it takes is listed below.</p>
<ul class="problem" id="in-input-problem" hidden></ul>
<details><summary>What it takes</summary>${schemaTable(jsonSchemaOf(run))}</details></div>`;
}
