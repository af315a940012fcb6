// The limits of every input of a calculation, held against what a test says of them.
import { expect, it } from "vitest";
import type { AnyCallable } from "../../src/core/callable.js";
import type { Definition, Entries } from "../../src/core/definition.js";

type WithRows = AnyCallable & { readonly definition?: Pick<Definition, "given">; readonly given?: Entries };

interface Bound {
  readonly edge: number;
  readonly unit: string;
  readonly within: boolean;
}

/** What a test says of an input, apart: `"above 0 in"`, `"from 0 %, below 100 %, usually 25 %"`, `"from 1, whole"`, `"any degF"`. */
interface Said {
  readonly low?: Bound;
  readonly high?: Bound;
  readonly whole: boolean;
  readonly usually?: string;
  /** Of an input that takes anything: a unit to try it in. */
  readonly any?: string;
}

function read(text: string): Said {
  const parts = text.split(", ").map((part) => {
    const [, word = "", edge = "", unit = ""] = /^(above|from|below|to|usually|whole|any)(?: (-?[\d.]+)?\s?(.*))?$/.exec(part) ?? [];
    if (word === "") throw new Error(`"${part}" says no limit`);
    return { word, edge: Number(edge), unit, rest: part.slice(word.length + 1) };
  });
  const bound = (out: string, within: string): Bound | undefined => {
    const found = parts.find(({ word }) => word === out || word === within);
    return found === undefined ? undefined : { ...found, within: found.word === within };
  };
  const [low, high] = [bound("above", "from"), bound("below", "to")];
  const rest = (word: string): string | undefined => parts.find((part) => part.word === word)?.rest;
  const [usually, any] = [rest("usually"), rest("any")];
  return { ...(low === undefined ? {} : { low }), ...(high === undefined ? {} : { high }), whole: rest("whole") !== undefined, ...(usually === undefined ? {} : { usually }), ...(any === undefined ? {} : { any }) };
}

/** The codes of what is wrong with a figure, put in the place of an input. */
type CodesOf = (text: string) => readonly string[];

function hold(name: string, { low, high, whole, any }: Said, codesOf: CodesOf): void {
  const codes = (value: number, unit: string): readonly string[] => codesOf(`${String(Number(value.toPrecision(12)))} ${unit}`.trim());
  const off = (edge: number): number => (whole ? 1 : edge === 0 ? 0.001 : Math.abs(edge) / 20);
  for (const [bound, code, way] of [[low, "tooLow", -1], [high, "tooHigh", 1]] as const) {
    const unit = (bound ?? low ?? high)?.unit ?? any ?? "";
    if (bound === undefined) {
      // Where there is no limit, a figure far out is taken.
      expect(codes(way * 10_000, unit), `${name}, far out`).not.toContain(code);
      continue;
    }
    expect(codes(bound.edge, unit), `${name} at ${String(bound.edge)} ${unit}`).toEqual(bound.within ? [] : [code]);
    expect(codes(bound.edge + way * off(bound.edge), unit), `${name} beyond ${String(bound.edge)} ${unit}`).toEqual([code]);
    const room = low === undefined || high === undefined ? Infinity : high.edge - low.edge;
    if (room > off(bound.edge)) expect(codes(bound.edge - way * off(bound.edge), unit), `${name} within ${String(bound.edge)} ${unit}`).toEqual([]);
  }
  if (whole) expect(codes(low === undefined ? (high?.edge ?? 1) - 0.5 : low.edge + 0.5, ""), `${name}, half a one`).toEqual(["notWhole"]);
}

/**
 * One test for a calculation: each of its quantities is refused at, and a twentieth beyond, the limits that are said here,
 * and taken a twentieth within them. Nothing else needs to be given, since all problems of a call come together; what a
 * missing input or a later step says does not count. An input that is not said is a failure, so that none is forgotten.
 *
 * @param of - a calculation, or a composed function with flat input
 * @param said - the limits of each quantity it is given; of a choice there is nothing to say
 */
export function itHoldsTheLimits(of: WithRows, said: Readonly<Record<string, string>>): void {
  it(`${of.id} takes what can be, and refuses what cannot`, () => {
    const rows = of.definition?.given ?? of.given ?? {};
    expect(Object.keys(said).sort()).toEqual(Object.entries(rows).flatMap(([name, row]) => ("is" in row ? [name] : [])).sort());
    for (const [name, text] of Object.entries(said)) {
      hold(name, read(text), (figure) => codesAt(of.try({ [name]: figure }), name));
      const row = rows[name];
      expect(row?.default === undefined ? undefined : String(row.default), `${name}, left out`).toBe(read(text).usually);
    }
  });
}

/**
 * The same for nested input, one figure after another put into an input that is right but for a name that is none: so it is
 * the reading that refuses, with all problems together, and not a part that would have refused the figure by itself.
 *
 * @param of - a composed function
 * @param title - which kind of its input this is
 * @param right - an input without a problem
 * @param said - the limits by path: `"sizes.0.share"`
 */
export function itHoldsTheLimitsIn(of: AnyCallable, title: string, right: object, said: Readonly<Record<string, string>>): void {
  it(`${of.id} takes what can be, and refuses what cannot: ${title}`, () => {
    expect(codesAt(of.try(right), "")).toEqual([]);
    for (const [path, text] of Object.entries(said)) hold(path, read(text), (figure) => codesAt(of.try({ ...changed(right, path.split("."), figure), noSuchInput: 1 }), path));
  });
}

/** What is wrong at a place; anywhere, where none is named. What else is out of order there, such as a pair, does not count. */
function codesAt(tried: ReturnType<AnyCallable["try"]>, path: string): readonly string[] {
  if (tried.ok) return [];
  return tried.problems.filter((problem) => path === "" || (problem.path.join(".") === path && limitCodes.has(problem.code))).map(({ code }) => code);
}
const limitCodes: ReadonlySet<string> = new Set(["tooLow", "tooHigh", "notWhole"]);

/** The same thing with another figure at the end of a path. */
function changed(of: object, [key = "", ...rest]: readonly string[], figure: string): object {
  const inner = (value: unknown): unknown => (rest.length === 0 ? figure : changed(value as object, rest, figure));
  if (Array.isArray(of)) return (of as readonly unknown[]).map((one, index) => (String(index) === key ? inner(one) : one));
  const record = of as Readonly<Record<string, unknown>>;
  if (!(key in record)) throw new Error(`"${key}" is not in the input`);
  return { ...record, [key]: inner(record[key]) };
}
