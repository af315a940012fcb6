// The package leaves the world as it was, and the world's own settings do not reach it; keys that mean something to the
// language are data like any other.
import { readFileSync } from "node:fs";
import path from "node:path";
import { Decimal } from "decimal.js";
import { afterEach, describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { catalogue } from "../../src/catalogue.js";
import { coursedFace } from "../../src/joints/index.js";
import { text } from "../../src/render/index.js";
import { jsonSchemaOf, schemaOf } from "../../src/schema/index.js";
import { takeOff } from "../../src/takeoff/index.js";

const wall = readFileSync(path.resolve(import.meta.dirname, "../../examples/wall.json"), "utf8");
const job = (): Record<string, unknown> => JSON.parse(wall) as Record<string, unknown>;
const face = { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" };

/** What a program can see of the settings and the built-in objects. */
function world(): unknown {
  const { precision, rounding, toExpNeg, toExpPos, minE, maxE, modulo, crypto } = Decimal;
  const built = [Object, Array, Function, String, Number, BigInt, Map, Set, Date, Promise, RegExp, Error, Decimal];
  return {
    decimal: { precision, rounding, toExpNeg, toExpPos, minE, maxE, modulo, crypto },
    zod: { ...z.config() },
    prototypes: built.map(({ prototype }) => Reflect.ownKeys(prototype as object).map(String)),
    globals: Object.getOwnPropertyNames(globalThis),
  };
}

/** Everything at work: good input and bad, nested and flat, texts and schemas. */
function useAll(): string {
  const solutions = [takeOff.try(job()), coursedFace.try(face), coursedFace.try({ area: 1 }), takeOff.try({ layers: [1] })];
  for (const run of catalogue) run.try({});
  for (const run of catalogue) jsonSchemaOf(run);
  const shown = solutions.map((one) => (one.ok ? text(one.solution) : JSON.stringify(one.problems)));
  return JSON.stringify([solutions, shown, schemaOf(coursedFace).safeParse(face)]);
}

const before = { decimal: { ...(world() as { readonly decimal: object }).decimal }, zod: { ...z.config() } };
afterEach(() => {
  Decimal.set(before.decimal);
  const now = z.config() as Record<string, unknown>;
  for (const key of Object.keys(now)) if (!Object.hasOwn(before.zod, key)) Reflect.deleteProperty(now, key);
});

it("neither prototypes nor globals nor the settings of decimal.js and zod change", () => {
  const old = JSON.stringify(world());
  useAll();
  expect(JSON.stringify(world())).toBe(old);
});

it("an app's own settings of decimal.js change no answer", () => {
  const usual = useAll();
  Decimal.set({ precision: 3, rounding: Decimal.ROUND_DOWN, toExpNeg: 0, toExpPos: 1 });
  expect(useAll()).toBe(usual);
});

it("an app's own settings of zod change no answer and no problem", () => {
  const usual = useAll();
  z.config({ customError: () => "an app's own words", localeError: () => "in another language" });
  expect(useAll()).toBe(usual);
});

/** A text of JSON with a key that the language knows put in at the beginning of an object. */
const keys = ["__proto__", "constructor", "prototype", "toString", "hasOwnProperty"] as const;
const withKey = (value: object, key: string, held: string): unknown => JSON.parse(`{${JSON.stringify(key)}:${held},${JSON.stringify(value).slice(1)}`);

describe.each(keys)("the key %s", (key) => {
  it("is refused by name in flat input, and reaches no prototype", () => {
    const tried = coursedFace.try(withKey(face, key, '{"area":"1 ft2","polluted":true}'));
    expect(tried.ok ? [] : tried.problems.map(({ code, path }) => [code, ...path])).toEqual([["unknown", key]]);
    expect("polluted" in {}).toBe(false);
  });

  it("stands for no input that is missing", () => {
    const tried = coursedFace.try(JSON.parse(`{${JSON.stringify(key)}:${JSON.stringify(face)}}`));
    expect(tried.ok ? [] : tried.problems.map(({ code }) => code).sort()).toEqual(["missing", "missing", "missing", "missing", "unknown"]);
  });

  it("is refused by name in nested input: at the top, in a layer", () => {
    const layers = job().layers as readonly object[];
    expect(toldOf(key, withKey(job(), key, '{"polluted":true}'))).toBe(true);
    expect(toldOf(key, { ...job(), layers: [withKey(layers[0] as object, key, '{"polluted":true}'), ...layers.slice(1)] })).toBe(true);
    expect("polluted" in {}).toBe(false);
  });

  it("is refused by name among what stands under names: packs, allowances", () => {
    expect(toldOf(key, { ...job(), packs: withKey(job().packs as object, key, '{"pieces":12}') })).toBe(true);
    expect(toldOf(key, { ...job(), allowances: withKey(job().allowances as object, key, '{"waste":"5 %"}') })).toBe(true);
  });
});

/** Whether the job is refused, and the key named. */
function toldOf(key: string, input: unknown): boolean {
  const tried = takeOff.try(input);
  return !tried.ok && tried.problems.some(({ path, message }) => path.includes(key) || message.includes(key));
}
