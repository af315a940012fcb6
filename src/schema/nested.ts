import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { choiceOf, mostProblems, nearest, type Path, pathText, type Problem, problem, problemAt, shown, type Trouble } from "../core/problems.js";
import { Quantity } from "../core/quantity.js";
import type { Wanted } from "../core/wording.js";
import type { StandardSchema } from "../core/standard-schema.js";
import type { Telling } from "../core/composed.js";
import { type QuantityInput, partRow, type PartRow } from "./fields.js";
import { say } from "./refusals.js";
import { atFirstUse } from "./at-first-use.js";

/**
 * Input that is not written to: a job kept in a variable `as const` has lists that are read only. What a quantity may be
 * written as keeps its name, which is what an editor shows.
 */
export type ReadOnly<T> = [T] extends [QuantityInput | undefined] ? T : T extends Quantity ? T : T extends object ? { readonly [K in keyof T]: ReadOnly<T[K]> } : T;

/** A zod schema that tells what is wrong in our words. */
export interface Nested<S extends z.ZodMiniType> extends StandardSchema<ReadOnly<z.input<S>>, z.output<S>>, Telling {
  /** The schema as zod has it. */
  readonly schema: S;
  /** What a place of an input is, in words. */
  readonly saysAt: NonNullable<Telling["saysAt"]>;
}

/** What zod says of one thing that is wrong; only what is used here. */
interface ZodIssue {
  readonly message: string;
  readonly path?: readonly PropertyKey[];
  readonly code?: string;
  readonly keys?: readonly string[];
  readonly values?: readonly unknown[];
  readonly expected?: string;
  readonly discriminator?: string;
  readonly options?: readonly unknown[];
  readonly maximum?: unknown;
  readonly issues?: readonly ZodIssue[];
  readonly params?: { readonly problem?: Problem };
}

/**
 * Makes a zod schema fit for a composed function's `reads`: everything that is wrong becomes one of our problems, with
 * its path, what was given and what is wanted. Unknown keys name the key they are near to.
 *
 * @param schema - a schema made with zod/mini, or a function that makes it at the first use; objects strict, quantities
 *   by `quantityField`
 * @returns the same as a Standard Schema
 * @example
 * ```ts
 * const reads = nested(z.strictObject({ height: quantityField("length", { says: "height of the wall" }) }));
 * ```
 */
export function nested<S extends z.ZodMiniType>(schema: S | (() => S)): Nested<S> {
  const built = typeof schema === "function" ? atFirstUse(schema) : () => schema;
  return {
    get schema() {
      return built();
    },
    saysAt: (path, input) => rowOf(partsAt(built(), path, input))?.says,
    "~standard": {
      version: 1,
      vendor: "settingbed",
      validate(value) {
        const read = z.safeParse(built(), value);
        const prototypes = prototypeKeys(value);
        if (read.success && prototypes.length === 0) return { value: read.data };
        const found = ((read.error?.issues ?? []) as readonly ZodIssue[]).slice(0, mostProblems).flatMap((issue) => problemsOf(issue, value, built()));
        const told = new Set(found.map(({ path }) => pathText(path)));
        const issues = [...found, ...prototypes.filter(({ path }) => !told.has(pathText(path)))];
        return { issues: issues.map((one) => ({ message: one.message, path: one.path, params: { problem: one } })) };
      },
    },
  };
}

/** The key that a record of zod leaves out without a word, wherever it stands as a key of its own. */
function prototypeKeys(value: unknown, path: Path = []): readonly Problem[] {
  if (typeof value !== "object" || value === null || value instanceof Quantity) return [];
  const own = Object.hasOwn(value, "__proto__") ? [problem({ code: "unknown", path: [...path, "__proto__"], given: "", wanted: common("leaveOut") })] : [];
  if (path.length > deepest) return own;
  return [...own, ...Object.entries(value).flatMap(([key, one]) => (key === "__proto__" ? [] : prototypeKeys(one, [...path, Array.isArray(value) ? Number(key) : key])))];
}

/** No input is nested deeper. */
const deepest = 20;

function problemsOf(issue: ZodIssue, input: unknown, schema: z.ZodMiniType): readonly Problem[] {
  const path = (issue.path ?? []).map((part) => (typeof part === "number" ? part : String(part)));
  const own = issue.params?.problem;
  if (own !== undefined) return [problemAt(path, own)];
  if (issue.code === "unrecognized_keys") return (issue.keys ?? []).map((key) => unknownKey(path, key, keysOf(partsAt(schema, path, input))));
  const parts = partsAt(schema, path, input);
  const row = rowOf(parts);
  return [problem({ path, says: row?.says, ...faultOf(issue, valueAt(input, path), path, row, parts.length === 1 ? keysOf(parts) : []) })];
}

function faultOf(issue: ZodIssue, value: unknown, path: Path, row: PartRow | undefined, keys: readonly string[]): Pick<Trouble, "code" | "given" | "wanted"> {
  // Of a key that may not stand there, zod tells the reasons as issues of its own.
  const [ofKey] = issue.code === "invalid_key" ? (issue.issues ?? []) : [];
  if (ofKey?.code === "too_big") return tooLong(path.at(-1), ofKey);
  if (issue.code === "too_big" && typeof value === "string") return tooLong(value, issue);
  const words = issue.discriminator === undefined ? (issue.code === "invalid_value" ? (issue.values ?? []) : undefined) : (issue.options ?? []);
  const wanted = words === undefined ? kindWanted(issue, row, keys) : choice(value, words);
  if (value === undefined) return { code: "missing", given: "", wanted };
  return { code: words === undefined ? "wrongKind" : "notAChoice", given: shown(value), wanted };
}

function tooLong(given: unknown, { maximum }: ZodIssue): Pick<Trouble, "code" | "given" | "wanted"> {
  return { code: "tooLong", given: shown(given), wanted: say("mostLetters", { most: Number(maximum) }) };
}

function choice(value: unknown, words: readonly unknown[]): Wanted {
  return words.length === 0 ? say("oneThatIsKnown") : choiceOf(value, words.map(String));
}

/** Of which kind it must be; of an object the keys too, where there is but one that can stand there. */
function kindWanted({ code, expected = "something else", message }: ZodIssue, row: PartRow | undefined, keys: readonly string[]): string | Wanted {
  if (code !== "invalid_type") return message;
  return expected === "object" && keys.length > 0 ? { kind: "object", of: keys } : (row?.wanted ?? say("writeKind", { kind: article(expected) }));
}

function unknownKey(path: Path, key: string, known: readonly string[]): Problem {
  const near = nearest(key, known);
  const wanted: Wanted = near === undefined ? (known.length === 0 ? common("leaveOut") : { kind: "key", of: known }) : { kind: "near", key: near };
  return problem({ code: "unknown", path: [...path, key.slice(0, 80)], given: "", wanted });
}

function article(expected: string): string {
  const names: Readonly<Record<string, string>> = { array: "a list", object: "an object", record: "an object", string: "a text", number: "a number", boolean: "true or false" };
  return names[expected] ?? expected;
}

function valueAt(input: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, key) => (typeof value === "object" && value !== null && Object.hasOwn(value, key) ? (value as Readonly<Record<string | number, unknown>>)[key] : undefined), input);
}

/** The parts of a schema that its own definition tells; zod's internals, read with care and only for a suggestion. */
interface Shape {
  readonly shape?: Readonly<Record<string, z.ZodMiniType>>;
  readonly element?: z.ZodMiniType;
  readonly valueType?: z.ZodMiniType;
  readonly innerType?: z.ZodMiniType;
  readonly getter?: () => z.ZodMiniType;
  readonly in?: z.ZodMiniType;
  readonly options?: readonly z.ZodMiniType[];
  /** The key by which the options are told apart, and the words that it takes in one of them. */
  readonly discriminator?: string;
  readonly values?: readonly unknown[];
}

function shapeOf(schema: z.ZodMiniType): Shape {
  return schema._zod.def as Shape;
}

/** A schema that may stand at a path of the input, without what only wraps it; and what it says it is. */
interface Part {
  readonly schema: z.ZodMiniType;
  readonly row: PartRow | undefined;
}

function partsAt(schema: z.ZodMiniType, path: Path, input: unknown, outer?: PartRow): readonly Part[] {
  const { shape, element, valueType, innerType, getter, in: inner, options, discriminator } = shapeOf(schema);
  const [key, ...rest] = path;
  const row = key === undefined ? (outer ?? partRow(schema)) : undefined;
  const wrapped = getter?.() ?? innerType ?? inner;
  if (wrapped !== undefined) return partsAt(wrapped, path, input, row);
  if (options !== undefined) return optionsFor(options, discriminator, input).flatMap((option) => partsAt(option, path, input, row));
  if (key === undefined) return [{ schema, row }];
  const child = element ?? valueType ?? (shape === undefined || !Object.hasOwn(shape, key) ? undefined : shape[key]);
  return child === undefined ? [] : partsAt(child, rest, valueAt(input, [key]));
}

/** What a place of the input is, by its schema. */
function rowOf(parts: readonly Part[]): PartRow | undefined {
  return parts.find(({ row }) => row !== undefined)?.row;
}

/** Of options that a key tells apart, the one that the input names; all where it names none. */
function optionsFor(options: readonly z.ZodMiniType[], discriminator: string | undefined, input: unknown): readonly z.ZodMiniType[] {
  if (discriminator === undefined) return options;
  const word = valueAt(input, [discriminator]);
  const named = options.filter((option) => partsAt(option, [], undefined).some(({ schema }) => {
    const key = shapeOf(schema).shape?.[discriminator];
    return key !== undefined && shapeOf(key).values?.includes(word) === true;
  }));
  return named.length === 0 ? options : named;
}

function keysOf(parts: readonly Part[]): readonly string[] {
  return [...new Set(parts.flatMap(({ schema }) => Object.keys(shapeOf(schema).shape ?? {})))];
}
