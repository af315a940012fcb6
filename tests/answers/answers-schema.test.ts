// What comes out, written as JSON, beside its schema: a validator from outside (ajv) takes every answer, and none that was spoilt.
import { readFileSync } from "node:fs";
import path from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { answersSchemaOf } from "../../src/answers/index.js";
import { catalogue } from "../../src/catalogue.js";
import { composed } from "../../src/core/index.js";
import type { Entries } from "../../src/core/definition.js";
import { jointDrift } from "../../src/joints/index.js";
import { takeOff } from "../../src/takeoff/index.js";
import { mutated } from "../fuzz/mutate.js";
import { inputArbitrary } from "../properties/arbitrary-inputs.js";
import { drawFrom } from "../support/random.js";
import { type RecordedCall, recordedCalls } from "../support/recorded-calls.js";

const ajv = new Ajv2020({ strict: true, allErrors: true });
const validators = new Map(catalogue.map((of) => [of.id, ajv.compile(answersSchemaOf(of))]));

/** What the validator has against answers that were written as JSON. */
function faultsOf(id: string, answers: unknown): readonly string[] {
  const validate = validators.get(id);
  if (validate === undefined) throw new Error(`${id} is not in the catalogue`);
  return validate(answers) ? [] : (validate.errors ?? []).map(({ instancePath, message = "" }) => `${instancePath} ${message}`);
}

/** The names of properties without a title; the value and the unit of a quantity have none. */
function withoutTitle(schema: unknown): readonly string[] {
  if (typeof schema !== "object" || schema === null) return [];
  const { properties } = schema as { readonly properties?: Readonly<Record<string, { readonly title?: string }>> };
  const own = Object.entries(properties ?? {}).flatMap(([name, { title }]) => (title === undefined ? [name] : []));
  return [...(own.join() === "value,unit" ? [] : own), ...Object.values(schema).flatMap(withoutTitle)];
}

const inJson = (answers: unknown): unknown => JSON.parse(JSON.stringify(answers)) as unknown;

let calls: readonly RecordedCall[] = [];
beforeAll(async () => {
  calls = await recordedCalls();
});

describe("the schema of the answers", () => {
  it("is a schema of draft 2020-12, whose every property has a title", () => {
    for (const of of catalogue) {
      const schema = answersSchemaOf(of);
      expect([of.id, ajv.validateSchema(schema)]).toEqual([of.id, true]);
      expect([of.id, withoutTitle(schema)]).toEqual([of.id, []]);
    }
  });

  it("takes what every example answers", () => {
    expect(new Set(calls.map(({ of }) => of.id)).size).toBe(catalogue.length);
    for (const { of, answers } of calls) expect([of.id, faultsOf(of.id, inJson(answers))]).toEqual([of.id, []]);
  });

  it("takes what is answered over the whole range of every flat input", () => {
    for (const of of catalogue) {
      const entries = "definition" in of ? (of.definition as { readonly given: Entries }).given : "given" in of ? (of.given as Entries) : undefined;
      if (entries === undefined) continue;
      fc.assert(fc.property(inputArbitrary(entries), (input) => {
        const tried = of.try(input);
        if (tried.ok) expect([of.id, input, faultsOf(of.id, inJson(tried.solution.answers))]).toEqual([of.id, input, []]);
      }), { numRuns: 8, seed: 2 });
    }
  });

  it("takes order lists with all that may stand in them, and those of jobs with something changed", () => {
    const jobs = ["wall.json", "entrance.json"].map((file) => JSON.parse(readFileSync(path.join(import.meta.dirname, "../../examples", file), "utf8")) as unknown) as [unknown, ...unknown[]];
    const draw = drawFrom(3);
    let answered = 0;
    for (const job of [...jobs, ...Array.from({ length: 150 }, () => mutated(draw.one(jobs), draw))]) {
      const tried = takeOff.try(job);
      if (!tried.ok) continue;
      answered += 1;
      expect(faultsOf(takeOff.id, inJson(tried.solution.answers))).toEqual([]);
    }
    expect(answered).toBeGreaterThan(20);
  });

  it("refuses answers with a part left out, one that it does not know, or a number in place of a quantity", () => {
    for (const { of, answers } of calls) {
      const written = inJson(answers) as Record<string, unknown>;
      expect([of.id, faultsOf(of.id, { ...written, unheardOf: 1 })]).not.toEqual([of.id, []]);
      expect([of.id, faultsOf(of.id, {})]).not.toEqual([of.id, []]);
      const [quantity] = Object.entries(written).filter(([, value]) => typeof value === "object" && value !== null && "unit" in value);
      if (quantity !== undefined) expect([of.id, faultsOf(of.id, { ...written, [quantity[0]]: 3 })]).not.toEqual([of.id, []]);
    }
  });

  it("says what a quantity is, its units, and the limits of a step", () => {
    const { properties } = answersSchemaOf(jointDrift) as { properties: Readonly<Record<string, { readonly title: string; readonly description: string }>> };
    for (const [name, { title, description }] of Object.entries(properties)) {
      const step = (jointDrift.definition.steps as Readonly<Record<string, { readonly is: string; readonly says?: string }>>)[name];
      expect(description.startsWith(step?.is ?? "?")).toBe(true);
      if (step?.says !== undefined) expect(title).toBe(step.says);
    }
  });

  it("is refused of a composed function that is not ours", () => {
    const own = composed({ id: "own.side", title: "Side", given: { side: { is: "length", unit: "ft", symbol: "s", says: "side" } }, run: ({ side }) => ({ side }) });
    expect(() => answersSchemaOf(own)).toThrow("the answers of own.side have no schema");
  });
});
