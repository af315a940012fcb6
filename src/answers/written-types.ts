import { spaced } from "../core/spaced.js";
import type { JsonSchema } from "../schema/schema-head.js";
import composed from "./composed.json" with { type: "json" };
import { quantityNamed } from "./quantity-schema.js";

const answers: Readonly<Record<string, JsonSchema>> = composed.answers;
const types: Readonly<Record<string, JsonSchema>> = composed.named;

/** What a composed function answers: `npm run exports` writes it from its type. Nothing where it is none of ours. */
export function writtenAnswers(id: string): JsonSchema | undefined {
  const schema = Object.hasOwn(answers, id) ? answers[id] : undefined;
  return schema === undefined || !("$ref" in schema) ? schema : namesIn(schema).map((name) => types[name])[0];
}

/** The types that a schema refers to, and those that these refer to. */
export function typesFor(schema: JsonSchema): JsonSchema {
  const found = new Map<string, JsonSchema>();
  const collect = (from: JsonSchema): void => {
    for (const name of namesIn(from)) {
      if (found.has(name)) continue;
      const named = types[name];
      found.set(name, named === undefined ? quantityNamed(name) : withTitles(named));
      if (named !== undefined) collect(named);
    }
  };
  collect(schema);
  return Object.fromEntries([...found].sort(([a], [b]) => a.localeCompare(b, "en")));
}

const reference = "#/$defs/";

function namesIn(schema: unknown): readonly string[] {
  if (typeof schema !== "object" || schema === null) return [];
  return Object.entries(schema).flatMap(([key, value]) => (key === "$ref" ? [String(value).slice(reference.length)] : namesIn(value)));
}

/** The schema with a title for every property: its name where it has no other. */
export function withTitles(schema: JsonSchema): JsonSchema {
  return Object.fromEntries(Object.entries(schema).map(([key, value]) => [key, key === "properties" ? titled(value as Readonly<Record<string, JsonSchema>>) : within(value)]));
}

function titled(properties: Readonly<Record<string, JsonSchema>>): JsonSchema {
  return Object.fromEntries(Object.entries(properties).map(([name, schema]) => [name, { title: spaced(name), ...withTitles(schema) }]));
}

function within(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(within);
  return typeof value === "object" && value !== null ? withTitles(value as JsonSchema) : value;
}
