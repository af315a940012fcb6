// Draws input from a JSON Schema: right in its keys and kinds, and of any size.
import type { JsonSchema } from "../../src/schema/index.js";
import type { Draw } from "../support/random.js";

const asList = (value: unknown): readonly JsonSchema[] => (Array.isArray(value) ? (value as readonly JsonSchema[]) : []);

/**
 * A value of a schema.
 *
 * @param whole - the schema at the top, where `$ref` leads
 */
export function drawFromSchema(schema: JsonSchema, draw: Draw, whole: JsonSchema = schema, depth = 0): unknown {
  const follow = (next: unknown): unknown => drawFromSchema(next as JsonSchema, draw, whole, depth + 1);
  if (typeof schema.$ref === "string") return follow(referred(schema.$ref, whole));
  if ("const" in schema) return schema.const;
  if (Array.isArray(schema.enum)) return draw.one(schema.enum as [unknown, ...unknown[]]);
  const units = unitsIn(schema);
  if (units !== undefined) return quantityText(units, draw);
  const choices = [...asList(schema.anyOf), ...asList(schema.oneOf)];
  if (choices.length > 0) return follow(draw.one(choices as [JsonSchema, ...JsonSchema[]]));
  const parts = asList(schema.allOf);
  if (parts.length > 0 && schema.properties === undefined) return Object.assign({}, ...parts.map(follow)) as unknown;
  if (schema.type === "array") return Array.from({ length: depth > 12 ? 0 : draw.whole(Number(schema.minItems ?? 0), 3) }, () => follow(schema.items ?? {}));
  if (schema.type === "object" || schema.properties !== undefined) return drawObject(schema, draw, follow);
  if (schema.type === "boolean") return draw.one([true, false]);
  if (schema.type === "number" || schema.type === "integer") return draw.whole(0, 40);
  return draw.one(["north", "south", "units", "2026-04-01T07:00[America/Denver]", "America/Denver", "2026-04-01"]);
}

function drawObject(schema: JsonSchema, draw: Draw, follow: (next: unknown) => unknown): unknown {
  const properties = (schema.properties ?? {}) as Readonly<Record<string, unknown>>;
  const required = (schema.required ?? []) as readonly string[];
  const kept = Object.entries(properties).filter(([name]) => required.includes(name) || draw.whole(1, 3) === 1);
  const known = Object.fromEntries(kept.map(([name, one]) => [name, follow(one)]));
  const others = schema.additionalProperties;
  return typeof others === "object" && others !== null ? { ...known, units: follow(others) } : known;
}

function referred(reference: string, whole: JsonSchema): JsonSchema {
  return reference.split("/").slice(1).reduce<JsonSchema>((at, key) => at[key] as JsonSchema, whole);
}

/** The units of a quantity: they stand as examples in the one of its ways that has `value` and `unit`. */
function unitsIn(schema: JsonSchema): readonly string[] | undefined {
  const pair = asList(schema.anyOf).find(({ properties }) => (properties as JsonSchema | undefined)?.unit !== undefined);
  const unit = (pair?.properties as Readonly<Record<string, JsonSchema>> | undefined)?.unit;
  return unit?.examples as readonly string[] | undefined;
}

function quantityText(units: readonly string[], draw: Draw): string {
  const number = draw.one(["1", "2", "3/8", "12", "48", "96", "0.5", "16", "240", "10-1/2", "20", "65", "5", "30", String(draw.whole(1, 9999) / 100)]);
  return `${number} ${draw.one((units.length === 0 ? [""] : units) as [string, ...string[]])}`.trim();
}
