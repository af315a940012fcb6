import type { AnyCallable } from "../core/callable.js";
import type { Definition, StepDefinition } from "../core/definition.js";
import { shownUnits } from "../core/fields.js";
import { limitTexts } from "../core/limit-texts.js";
import { spaced } from "../core/spaced.js";
import { unitSymbol } from "../core/units.js";
import { type JsonSchema, schemaHead } from "../schema/schema-head.js";
import { quantitySchema } from "./quantity-schema.js";
import { typesFor, withTitles, writtenAnswers } from "./written-types.js";

/**
 * What a calculation or a composed function answers, as JSON Schema (2020-12): a quantity as its `toJSON` writes it, with the
 * exact value as text and its unit.
 *
 * @param of - anything of the catalogue, or a calculation of your own
 * @throws TypeError if it is a composed function of your own, whose answers are as its code has them
 * @example
 * ```ts
 * answersSchemaOf(wetFilm).required; // ["solids", "dryFilm", "wetFilm"]
 * answersSchemaOf(pullOver).required; // ["safetyFactor", "resistanceFactor", "nominal"]
 * ```
 */
export function answersSchemaOf(of: AnyCallable): JsonSchema {
  const head = schemaHead(of, "answers");
  if ("definition" in of) return { ...head, ...stepsSchema((of.definition as Definition).steps) };
  const schema = writtenAnswers(of.id);
  if (schema === undefined) throw new TypeError(`the answers of ${of.id} have no schema; they are as its types say`);
  return { ...head, ...withTitles(schema), $defs: typesFor(schema) };
}

function stepsSchema(steps: Definition["steps"]): JsonSchema {
  return {
    type: "object",
    properties: Object.fromEntries(Object.entries(steps).map(([name, step]) => [name, stepSchema(name, step)])),
    required: Object.keys(steps),
    additionalProperties: false,
  };
}

function stepSchema(name: string, step: StepDefinition): JsonSchema {
  return { title: step.says ?? spaced(name), ...quantitySchema(step.is, shownUnits(step).map(unitSymbol), limitTexts(step)) };
}
