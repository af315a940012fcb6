import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { choiceOf, mostProblems, nearest, type Path, pathText, type Problem, problem, problemAt, shown } from "../core/problems.js";
import { Quantity } from "../core/quantity.js";
import type { Wanted } from "../core/wording.js";
import type { StandardSchema } from "../core/standard-schema.js";
import type { QuantityInput } from "./fields.js";
import { say } from "./refusals.js";
import { atFirstUse } from "./at-first-use.js";

/** Input that is not written to: a job kept in a variable `as const` has lists that are read only. */
export type ReadOnly<T> = [T] extends [QuantityInput | boolean | undefined] ? T : T extends object ? { readonly [K in keyof T]: ReadOnly<T[K]> } : T;

/** A zod schema that tells what is wrong in our words. */
export interface Nested<S extends z.ZodMiniType> extends StandardSchema<ReadOnly<z.input<S>>, z.output<S>> {
  /** The schema as zod has it. */
  readonly schema: S;
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
  if (issue.code === "unrecognized_keys") return (issue.keys ?? []).map((key) => unknownKey(path, key, keysAt(schema, path, input)));
  const value = valueAt(input, path);
  if (issue.discriminator !== undefined) return [choice(path, value, issue.options ?? [])];
  if (issue.code === "invalid_value") return [choice(path, value, issue.values ?? [])];
  const kind = issue.code === "invalid_type" ? kindWanted(issue.expected, schemasAt(schema, path, input)) : undefined;
  if (value === undefined) return [problem({ code: "missing", path, given: "", wanted: kind ?? "" })];
  if (issue.code === "too_big" && typeof value === "string") return [problem({ code: "tooLong", path, given: shown(value), wanted: say("mostLetters", { most: Number(issue.maximum) }) })];
  return [problem({ code: "wrongKind", path, given: shown(value), wanted: kind ?? issue.message })];
}

/** Of which kind it must be; of an object the keys too, where there is but one that can stand there. */
function kindWanted(expected = "something else", shapes: readonly Shape[]): Wanted {
  const [{ shape } = {}, ...others] = shapes;
  return expected === "object" && shape !== undefined && others.length === 0 ? { kind: "object", of: Object.keys(shape) } : say("writeKind", { kind: article(expected) });
}

function choice(path: Path, value: unknown, values: readonly unknown[]): Problem {
  const of = values.map(String);
  if (value === undefined) return problem({ code: "missing", path, given: "", wanted: { kind: "choice", of } });
  return problem({ code: "notAChoice", path, given: shown(value), wanted: of.length === 0 ? say("oneThatIsKnown") : choiceOf(value, of) });
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

/** The object schemas that may stand at a path of the input. */
function schemasAt(schema: z.ZodMiniType, path: Path, input: unknown): readonly Shape[] {
  const { shape, element, innerType, getter, in: inner, options, discriminator } = shapeOf(schema);
  if (getter !== undefined) return schemasAt(getter(), path, input);
  if (innerType !== undefined) return schemasAt(innerType, path, input);
  if (inner !== undefined) return schemasAt(inner, path, input);
  if (options !== undefined) return optionsFor(options, discriminator, input).flatMap((option) => schemasAt(option, path, input));
  const [key, ...rest] = path;
  if (key === undefined) return shape === undefined ? [] : [{ shape }];
  const within = valueAt(input, [key]);
  if (element !== undefined) return schemasAt(element, rest, within);
  const child = shape === undefined || !Object.hasOwn(shape, key) ? undefined : shape[key];
  return child === undefined ? [] : schemasAt(child, rest, within);
}

/** Of options that a key tells apart, the one that the input names; all where it names none. */
function optionsFor(options: readonly z.ZodMiniType[], discriminator: string | undefined, input: unknown): readonly z.ZodMiniType[] {
  if (discriminator === undefined) return options;
  const word = valueAt(input, [discriminator]);
  const named = options.filter((option) => schemasAt(option, [], undefined).some(({ shape }) => {
    const key = shape?.[discriminator];
    return key !== undefined && shapeOf(key).values?.includes(word) === true;
  }));
  return named.length === 0 ? options : named;
}

function keysAt(schema: z.ZodMiniType, path: Path, input: unknown): readonly string[] {
  return [...new Set(schemasAt(schema, path, input).flatMap(({ shape }) => Object.keys(shape ?? {})))];
}
