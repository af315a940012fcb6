// Check values from outside, as printed in tests/vectors, and where the tests use them.
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { Decimal } from "decimal.js";
import { expect } from "vitest";

export interface VectorSource {
  readonly publisher: string;
  readonly title: string;
  /** Empty where the source names none. */
  readonly edition: string;
  /** Empty where the source is one page or one rule. */
  readonly locator: string;
}

export interface Vector {
  readonly id: string;
  readonly topic: string;
  readonly what: string;
  /** As printed, with their units. */
  readonly inputs: Readonly<Record<string, string>>;
  /** As printed, with their units. */
  readonly expected: Readonly<Record<string, string>>;
  /** In words. */
  readonly tolerance: string;
  readonly source: VectorSource;
  /** `read` in the source, `secondary` in a text that quotes it, `computed` by a program or by hand under a rule of the source. */
  readonly knownBy: "read" | "secondary" | "computed";
  readonly note?: string;
  /** The figure is wrong as printed: it may show a disagreement, and is never the right answer. */
  readonly misprint?: true;
  readonly url?: string;
  /** Rounding cases: the formula in its order of working, the exact figure that is rounded, and why it is a boundary. */
  readonly formula?: string;
  readonly exactArgument?: string;
  readonly boundary?: string;
}

const tests = path.resolve(import.meta.dirname, "..");
const folder = path.join(tests, "vectors");
const notUsedFile = "not-used.json";

const readJson = (file: string): unknown => JSON.parse(readFileSync(path.join(folder, file), "utf8"));

/** Every row, with the file it stands in. */
export const vectorRows: readonly (Vector & { readonly file: string })[] = readdirSync(folder)
  .filter((file) => file.endsWith(".json") && file !== notUsedFile)
  .sort()
  .flatMap((file) => (readJson(file) as { readonly rows: readonly Vector[] }).rows.map((row) => ({ ...row, file })));

const byId = new Map(vectorRows.map((row) => [row.id, row]));

/** The row of an id. Write the id as a literal: that is how {@link vectorUse} finds it. */
export function vector(id: string): Vector {
  const row = byId.get(id);
  if (row === undefined) throw new Error(`No row "${id}" in tests/vectors.`);
  return row;
}

/** All rows whose id starts so, one at least. Write the prefix as a literal: that is how {@link vectorUse} finds it. */
export function vectors(prefix: string): readonly Vector[] {
  const rows = prefix === "" ? [] : vectorRows.filter(({ id }) => id.startsWith(prefix));
  if (rows.length === 0) throw new Error(`No row in tests/vectors has an id that starts with "${prefix}".`);
  return rows;
}

export interface VectorUse {
  readonly used: readonly string[];
  /** Neither used nor listed with a reason. */
  readonly unused: readonly string[];
  /** From tests/vectors/not-used.json. */
  readonly notUsedWithReason: Readonly<Record<string, string>>;
  /** Ids and prefixes, in tests or in not-used.json, that lead to no row; whatever the scopes. */
  readonly unknown: readonly string[];
}

/** The ids and prefixes a test's text asks for by `vector("id")` and `vectors("prefix")`, outside comments. */
export function vectorCallsIn(text: string): { readonly ids: readonly string[]; readonly prefixes: readonly string[] } {
  const code = text.replace(/^\s*(?:\/\/|\/?\*).*$|\s\/\/\s.*$/gm, "");
  const calls = [...code.matchAll(/\b(vectors?)\(\s*(["'`])([^"'`$\n]+)\2\s*,?\s*\)/g)];
  const of = (name: string): readonly string[] => calls.filter((call) => call[1] === name).map((call) => call[3] as string);
  return { ids: of("vector"), prefixes: of("vectors") };
}

/**
 * Which rows the tests use, read from the text of tests/**\/*.test.ts (but for this harness's own test).
 *
 * @param scopes - topics, each with those under it (`"film"`: `film`, `film/unit`, ...), or ids by a star at the end
 * (`"screw-*"`); all rows where none is given. One that leads to no row throws, so that no check is empty.
 */
export function vectorUse(...scopes: readonly string[]): VectorUse {
  const files = readdirSync(tests, { recursive: true, encoding: "utf8" })
    .map((file) => file.replaceAll(path.sep, "/"))
    .filter((file) => file.endsWith(".test.ts") && file !== "support/vectors.test.ts");
  const calls = files.map((file) => vectorCallsIn(readFileSync(path.join(tests, file), "utf8")));
  const ids = new Set(calls.flatMap((call) => call.ids));
  const prefixes = new Set(calls.flatMap((call) => call.prefixes));
  const reasons = readJson(notUsedFile) as Readonly<Record<string, string>>;

  const rows = inScopes(scopes);
  const isUsed = ({ id }: Vector): boolean => ids.has(id) || [...prefixes].some((prefix) => id.startsWith(prefix));
  const hasReason = ({ id }: Vector): boolean => Object.hasOwn(reasons, id);
  return {
    used: rows.filter(isUsed).map(({ id }) => id),
    unused: rows.filter((row) => !isUsed(row) && !hasReason(row)).map(({ id }) => id),
    notUsedWithReason: Object.fromEntries(rows.filter(hasReason).map(({ id }) => [id, reasons[id] as string])),
    unknown: [
      ...[...ids, ...Object.keys(reasons)].filter((id) => !byId.has(id)),
      ...[...prefixes].filter((prefix) => !vectorRows.some(({ id }) => id.startsWith(prefix))),
    ],
  };
}

function inScopes(scopes: readonly string[]): readonly Vector[] {
  const within = ({ id, topic }: Vector, scope: string): boolean =>
    scope.endsWith("*") ? id.startsWith(scope.slice(0, -1)) : topic === scope || topic.startsWith(`${scope}/`);
  const empty = scopes.filter((scope) => !vectorRows.some((row) => within(row, scope)));
  if (empty.length > 0) throw new Error(`No row in tests/vectors is of ${empty.map((scope) => `"${scope}"`).join(", ")}.`);
  return scopes.length === 0 ? vectorRows : vectorRows.filter((row) => scopes.some((scope) => within(row, scope)));
}

export interface Printed {
  /** As printed, trailing zeros kept. */
  readonly number: string;
  /** The places it is printed to; an exponent counts (`5.72e-11` has 13). */
  readonly decimals: number;
  /** What follows the number: its unit, as a rule. */
  readonly rest: string;
}

/**
 * Splits `"11.7 ft3 per 1000 brick"` into its number and the rest. Undefined where the text is no single number:
 * `"23 ft 2 in"`, `"1/4 in"`, `"45 to 50 ft2"`, `"6-48 h"`, `"4.62, 3.80"`, `"about 430 L"`.
 */
export function printed(text: string): Printed | undefined {
  const [, number, rest = ""] = /^([-+]?\d+(?:\.\d+)?(?:e[-+]?\d+)?)(?:\s+(.*))?$/.exec(text) ?? [];
  // A second number may stand in brackets, as the same figure in other units, or after "per".
  const besides = rest.replace(/\([^()]*\)/g, "").replace(/\bper\s+\d+/g, "");
  if (number === undefined || /(?:^|\s)[-+±]?\.?\d/.test(besides)) return undefined;
  const [mantissa = "", exponent = "0"] = number.split("e");
  const decimals = Math.max(0, (mantissa.split(".")[1] ?? "").length - Number(exponent));
  return { number, decimals, rest };
}

/** Rounds half up (a half away from zero) and writes all places: `roundTo("8.895", 2)` is `"8.90"`. */
export function roundTo(value: Decimal.Value, decimals: number): string {
  const rounded = new Decimal(value).toDecimalPlaces(decimals, Decimal.ROUND_HALF_UP);
  return (rounded.isZero() ? rounded.abs() : rounded).toFixed(decimals);
}

/** Asserts that a figure, rounded half up to the places printed, is the number printed. Units are the test's own care. */
export function expectPrinted(actual: Decimal.Value, printedText: string | undefined): void {
  const figure = printedText === undefined ? undefined : printed(printedText);
  if (figure === undefined) throw new Error(`${printedText === undefined ? "Nothing" : `"${printedText}"`} is no single printed number.`);
  expect(roundTo(actual, figure.decimals), `${new Decimal(actual).toString()} against "${printedText as string}"`).toBe(roundTo(figure.number, figure.decimals));
}
