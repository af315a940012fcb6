// The JSON Schemas beside a validator from outside (ajv): it takes each by the meta-schema of draft 2020-12, and it lets by
// whatever the function itself takes.
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { beforeAll, describe, expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import type { Entries } from "../../src/core/definition.js";
import { jsonSchemaOf } from "../../src/schema/index.js";
import { mutated } from "../fuzz/mutate.js";
import { inputArbitrary } from "../properties/arbitrary-inputs.js";
import { drawFrom } from "../support/random.js";
import { type RecordedCall, recordedCalls } from "../support/recorded-calls.js";

const ajv = new Ajv2020({ strict: true, strictRequired: false, allErrors: true });
const validators = new Map(catalogue.map((of) => [of.id, ajv.compile(jsonSchemaOf(of))]));

/** A value as JSON has it. */
const inJson = (value: unknown): unknown => JSON.parse(JSON.stringify(value)) as unknown;

/** The same, or null where what was put in cannot be written as JSON. */
function inJsonIfItCan(value: unknown): unknown {
  try {
    return inJson(value);
  } catch {
    return null;
  }
}

/** What the validator has against a value, as it stands in JSON. */
function faultsOf(id: string, value: unknown): readonly string[] {
  const validate = validators.get(id);
  if (validate === undefined) throw new Error(`${id} is not in the catalogue`);
  return validate(inJson(value)) ? [] : (validate.errors ?? []).map(({ instancePath, message = "" }) => `${instancePath} ${message}`);
}

let calls: readonly RecordedCall[] = [];
beforeAll(async () => {
  calls = await recordedCalls();
});

describe("the schema of an input", () => {
  it("is a schema of draft 2020-12", () => {
    for (const of of catalogue) expect([of.id, ajv.validateSchema(jsonSchemaOf(of))]).toEqual([of.id, true]);
  });

  it("lets the input of every example by", () => {
    expect(new Set(calls.map(({ of }) => of.id)).size).toBe(catalogue.length);
    for (const { of, input } of calls) expect([of.id, faultsOf(of.id, input)]).toEqual([of.id, []]);
  });

  it("lets by what is taken, over the whole range of every flat input", () => {
    for (const of of catalogue) {
      const entries = "definition" in of ? (of.definition as { readonly given: Entries }).given : "given" in of ? (of.given as Entries) : undefined;
      if (entries === undefined) continue;
      fc.assert(fc.property(inputArbitrary(entries), (input) => {
        if (of.try(input).ok) expect([of.id, faultsOf(of.id, input)]).toEqual([of.id, []]);
      }), { numRuns: 5, seed: 1 });
    }
  });

  it("lets by what is taken of jobs and other nested input with something changed in them", () => {
    const nested = calls.filter(({ of }) => "reads" in of);
    expect(nested.length).toBeGreaterThan(40);
    const draw = drawFrom(1);
    let taken = 0;
    for (let times = 0; times < 3000; times += 1) {
      const { of, input } = draw.one(nested as [RecordedCall, ...RecordedCall[]]);
      const changed = inJsonIfItCan(mutated(inJson(input), draw));
      if (!of.try(changed).ok) continue;
      taken += 1;
      expect([of.id, changed, faultsOf(of.id, changed)]).toEqual([of.id, changed, []]);
    }
    expect(taken).toBeGreaterThan(300);
  });

  it("refuses what is missing, unknown, of another kind, or both of a pair", () => {
    expect(faultsOf("joints.coursed-face", { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depht: "3/4 in" })).toHaveLength(2);
    expect(faultsOf("joints.coursed-face", { area: ["312 ft2"], unitLength: true, unitHeight: { value: 3 }, depth: "3/4 in" }).length).toBeGreaterThan(2);
    const coat = { area: "100 ft2", wetFilm: "20 mil", coats: 2, packVolume: "5 gal" };
    expect(faultsOf("film.coating-order", { ...coat, waste: "5 %" })).toEqual([]);
    expect(faultsOf("film.coating-order", coat)).not.toEqual([]);
    expect(faultsOf("film.coating-order", { ...coat, waste: "5 %", lossShare: "5 %" })).not.toEqual([]);
  });
});
