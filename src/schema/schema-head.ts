import type { AnyCallable } from "../core/callable.js";

/** A JSON Schema, draft 2020-12. */
export type JsonSchema = Readonly<Record<string, unknown>>;

/** What a schema begins with. */
export function schemaHead({ id, title }: AnyCallable, what: "input" | "answers"): JsonSchema {
  return { $schema: "https://json-schema.org/draft/2020-12/schema", $id: `urn:settingbed:${id}:${what}`, title };
}
