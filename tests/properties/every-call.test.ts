// What holds for every call, whatever is calculated: an answer or problems, nothing changed, the same again, and the same
// in other units. A few runs of each, always the same; PROPERTY_RUNS and PROPERTY_SEED tell of more and of others.
import { Decimal as SharedDecimal } from "decimal.js";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import type { Entries } from "../../src/core/definition.js";
import { type Attempt, InputError, isQuantity, type Quantity, quantity, type Readable } from "../../src/core/index.js";
import { amountOf, makeQuantity } from "../../src/core/quantity.js";
import { type UnitCode, unitsOf, unitSystem } from "../../src/core/units.js";
import { wrongIn } from "../support/broken-promises.js";
import { type Given, inputArbitrary } from "./arbitrary-inputs.js";

interface Flat {
  (input: never): unknown;
  readonly id: string;
  readonly try: (input: unknown) => Attempt<unknown>;
  readonly entries: Entries;
}

const options = { numRuns: Number(process.env.PROPERTY_RUNS ?? 12), seed: Number(process.env.PROPERTY_SEED ?? 1) };
const calculations: readonly Flat[] = catalogue.flatMap((run) => ("definition" in run ? [Object.assign((input: never) => run(input), { id: run.id, try: run.try, entries: (run.definition as { readonly given: Entries }).given })] : []));
const composed: readonly Flat[] = catalogue.flatMap((run) => ("given" in run ? [Object.assign((input: never) => run(input), { id: run.id, try: run.try, entries: run.given as Entries })] : []));

const frozenInput = (given: Given): Given => {
  for (const one of Object.values(given)) Object.freeze(one);
  return Object.freeze(given);
};

/** Every problem that says that the code did not foresee it. */
const unforeseen = (tried: Attempt<unknown>): readonly string[] =>
  tried.ok ? [] : tried.problems.filter(({ code, wanted }) => code === "refused" && wanted.startsWith("it could not be worked out")).map(({ message }) => message);

it("there is something to try", () => {
  expect(calculations.length).toBeGreaterThan(120);
  expect(composed.length).toBeGreaterThan(30);
});

/** Which were answered once at least; a call that is only ever refused is not tried at all. */
const answered = new Set<string>();

describe.each([...calculations, ...composed].map((run) => [run.id, run] as const))("%s", (_id, run) => {
  it("answers or tells its problems, in frozen results without a number that is none; changes no input; the same again", () => {
    fc.assert(fc.property(inputArbitrary(run.entries), (drawn) => {
      const given = frozenInput(drawn);
      const before = JSON.stringify(given);
      const [tried, again] = [run.try(given), run.try(given)];
      expect(JSON.stringify(given)).toBe(before);
      expect(JSON.stringify(again)).toBe(JSON.stringify(tried));
      expect(unforeseen(tried)).toEqual([]);
      expect(wrongIn(tried, "")).toEqual([]);
      if (tried.ok) {
        answered.add(run.id);
        return;
      }
      expect(tried.problems.length).toBeGreaterThan(0);
      expect(() => run(given as never)).toThrow(InputError);
    }), options);
  });
});

it("nearly all are answered now and then", () => {
  const never = [...calculations, ...composed].map(({ id }) => id).filter((id) => !answered.has(id));
  expect(never.length, never.join(", ")).toBeLessThan(calculations.length / 10);
});

/** The same amount in a unit of the SI, to its last digit. */
function inSi(is: Quantity["dimension"], given: unknown): unknown {
  const read: Quantity = quantity(is, given as Readable<typeof is>);
  const si = (unitsOf(is) as readonly UnitCode[]).find((unit) => unitSystem(unit) === "si");
  return si === undefined ? given : makeQuantity(is, amountOf(read), si).toJSON();
}

/** Every quantity of an answer, with the way to it. */
function quantitiesIn(value: unknown, at = ""): readonly (readonly [string, Quantity])[] {
  if (isQuantity(value)) return [[at, value]];
  return typeof value === "object" && value !== null ? Object.entries(value).flatMap(([key, one]) => quantitiesIn(one, `${at}.${key}`)) : [];
}

/** Equal; or as near as forty digits let them be, where an angle or a root was on the way. */
function same(a: Quantity, b: Quantity): boolean {
  const [one, other] = [a.to(), makeQuantity(b.dimension, amountOf(b), a.unit).to()];
  return one.minus(other).abs().lte(SharedDecimal.max(one.abs(), "1e-12").times("1e-20"));
}

describe.each(calculations.map((run) => [run.id, run] as const))("%s in units of the SI", (_id, run) => {
  it("answers the same", () => {
    fc.assert(fc.property(inputArbitrary(run.entries), (given) => {
      const metric = Object.fromEntries(Object.entries(given).map(([name, one]) => {
        const row = run.entries[name];
        return [name, row === undefined || "oneOf" in row ? one : inSi(row.is, one)];
      }));
      const [tried, other] = [run.try(given), run.try(metric)];
      expect(other.ok).toBe(tried.ok);
      if (!tried.ok || !other.ok) return;
      const answers = new Map(quantitiesIn(other.solution.answers));
      expect(quantitiesIn(tried.solution.answers).flatMap(([at, one]) => (same(one, answers.get(at) as Quantity) ? [] : [`${at}: ${one.toString()} and ${String(answers.get(at))}`]))).toEqual([]);
    }), options);
  });
});
