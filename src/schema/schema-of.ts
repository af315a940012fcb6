import * as z from "zod/mini";
import type { Calculation } from "../core/calculation.js";
import type { Composed, ComposedFrom } from "../core/composed.js";
import type { Definition, Entries, EntryDefinition, Inputs, ReadInputs } from "../core/definition.js";
import { problem } from "../core/problems.js";
import { fieldsOf } from "../core/fields.js";
import { type FieldRow, quantityField } from "./fields.js";
import type { Nested } from "./nested.js";

/**
 * The input of a calculation or a composed function as a zod schema, for those who build on zod: quantities are read by
 * the same reader, so what it gives can be handed to the calculation.
 *
 * @param of - a calculation, or a composed function
 * @returns a schema of zod/mini; it knows keys, units, limits and pairs, but not whether there is an answer
 * @example
 * ```ts
 * schemaOf(coursedFace).safeParse({ area: "312" }).success; // false
 * ```
 */
export function schemaOf<D extends Definition>(of: Calculation<D>): z.ZodMiniType<ReadInputs<D["given"]>, Inputs<D["given"]>>;
export function schemaOf<G extends Entries>(of: Composed<G, unknown>): z.ZodMiniType<ReadInputs<G>, Inputs<G>>;
export function schemaOf<I, O>(of: ComposedFrom<I, O, unknown>): z.ZodMiniType<O, I>;
export function schemaOf(of: object): z.ZodMiniType {
  if ("definition" in of) return fromEntries((of.definition as Definition).given);
  if ("given" in of) return fromEntries(of.given as Entries);
  if ("reads" in of && isNested(of.reads)) return of.reads.schema;
  throw new TypeError("schemaOf takes a calculation or a composed function");
}

function isNested(reads: unknown): reads is Nested<z.ZodMiniType> {
  return typeof reads === "object" && reads !== null && "schema" in reads;
}

function fromEntries(entries: Entries): z.ZodMiniType {
  const shape = Object.fromEntries(Object.entries(entries).map(([name, row]) => [name, entrySchema(row)]));
  const { pairs } = fieldsOf(entries);
  return z.strictObject(shape).check((context) => {
    for (const { word, names } of pairs) {
      const given = names.filter((name) => (context.value as Readonly<Record<string, unknown>>)[name] !== undefined);
      if (given.length === 1) continue;
      const one = problem({ code: "either", path: [word], given: given.join(" and "), wanted: { kind: "exactlyOne", of: names } });
      context.issues.push({ code: "custom", input: context.value, path: [word], message: one.message, params: { problem: one } });
    }
  });
}

function entrySchema(row: EntryDefinition): z.ZodMiniType {
  const mayBeLeftOut = row.default !== undefined || row.optional === true || ("either" in row && typeof row.either === "string");
  const field = "oneOf" in row ? z.literal([...row.oneOf]) : quantityField(row.is, row as FieldRow);
  return mayBeLeftOut ? z.optional(field) : field;
}
