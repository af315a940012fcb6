import * as z from "zod/mini";
import { basisText } from "../core/basis.js";
import type { AnyCallable } from "../core/callable.js";
import type { ChoiceDefinition, Definition, Entries, EntryDefinition } from "../core/definition.js";
import type { DimensionName } from "../core/dimensions.js";
import { limitTexts } from "../core/limit-texts.js";
import { fieldsOf, shownUnits } from "../core/fields.js";
import type { Limited } from "../core/limits.js";
import { unitsOf, unitSymbol } from "../core/units.js";
import { fieldRow, partRow, proposedUnits } from "./fields.js";
import type { Nested } from "./nested.js";
import { type JsonSchema, schemaHead } from "./schema-head.js";

/**
 * The input of a calculation or a composed function as JSON Schema (2020-12), with titles, units, limits, defaults and
 * what they stand on. That of its answers is in `settingbed/answers`.
 *
 * @param of - a calculation, or a composed function
 * @throws TypeError if it is neither
 * @example
 * ```ts
 * jsonSchemaOf(coursedFace).required; // ["area", "unitLength", "unitHeight", "depth"]
 * ```
 */
export function jsonSchemaOf(of: AnyCallable): JsonSchema {
  const head = schemaHead(of, "input");
  if ("definition" in of) return { ...head, ...inputSchema((of.definition as Definition).given) };
  if ("given" in of) return { ...head, ...inputSchema(of.given as Entries) };
  if ("reads" in of) return { ...head, ...nestedSchema((of.reads as Nested<z.ZodMiniType>).schema) };
  throw new TypeError("jsonSchemaOf takes a calculation or a composed function");
}

function inputSchema(entries: Entries): JsonSchema {
  const { all, pairs } = fieldsOf(entries);
  const inPair = new Set(pairs.flatMap(({ names }) => names));
  const required = all.filter(({ name, fallback, optional }) => fallback === undefined && !optional && !inPair.has(name)).map(({ name }) => name);
  const choices = pairs.map(({ names }) => ({ oneOf: names.map((name) => ({ required: [name] })) }));
  return {
    type: "object",
    properties: Object.fromEntries(Object.entries(entries).map(([name, row]) => [name, entrySchema(row)])),
    required,
    ...(choices.length === 0 ? {} : { allOf: choices }),
    additionalProperties: false,
  };
}

function entrySchema(row: EntryDefinition): JsonSchema {
  const fallback = row.default === undefined ? {} : { default: row.default };
  const because = row.basis === undefined ? [] : [`default: ${basisText(row.basis)}`];
  if ("oneOf" in row) return { title: row.says, enum: (row satisfies ChoiceDefinition).oneOf, ...described(because), ...fallback };
  const units = unitsFor(row.is, shownUnits(row).map(unitSymbol));
  return { title: row.says, ...quantitySchema(row, units), ...described([...unitsText(row.is, units), ...limitsText(row), ...because]), ...fallback };
}

function described(parts: readonly string[]): JsonSchema {
  return parts.length === 0 ? {} : { description: parts.join("; ") };
}

/** The units of a dimension, those that are proposed first. */
function unitsFor(is: DimensionName, proposed: readonly string[]): readonly string[] {
  return [...new Set([...proposed, ...unitsOf(is).map(unitSymbol)])];
}

function unitsText(is: DimensionName, units: readonly string[]): readonly string[] {
  return is === "count" || is === "ratio" ? [] : [`${is} in ${units.join(", ")}`];
}

function limitsText(row: Limited): readonly string[] {
  const told = limitTexts(row);
  return told.length === 0 ? [] : [told.join(" and ")];
}

/** A text with its unit, `{ value, unit }`; a number too for a ratio or a count. */
function quantitySchema({ is, whole }: Limited, units: readonly string[]): JsonSchema {
  const text = { type: "string", minLength: 1, maxLength: 80 };
  const pair = {
    type: "object",
    properties: { value: { anyOf: [{ type: "number" }, { type: "string" }] }, unit: { type: "string", examples: units } },
    required: ["value", "unit"],
    additionalProperties: false,
  };
  return { anyOf: [text, pair, ...(is === "count" || is === "ratio" ? [{ type: whole === true ? "integer" : "number" }] : [])] };
}

function nestedSchema(schema: z.ZodMiniType): JsonSchema {
  const whole = z.toJSONSchema(schema, {
    io: "input",
    unrepresentable: "any",
    override({ zodSchema, jsonSchema }) {
      const row = fieldRow(zodSchema);
      if (row !== undefined) {
        const units = unitsFor(row.is, proposedUnits(row.is));
        Object.assign(jsonSchema, { title: row.says, ...quantitySchema(row, units), ...described([...unitsText(row.is, units), ...limitsText(row)]) });
      }
      const part = row === undefined ? partRow(zodSchema) : undefined;
      if (part !== undefined) Object.assign(jsonSchema, { title: part.says, ...described(part.wanted === undefined ? [] : [part.wanted.words]) });
    },
  });
  return Object.fromEntries(Object.entries(whole).filter(([key]) => key !== "$schema" && key !== "~standard"));
}
