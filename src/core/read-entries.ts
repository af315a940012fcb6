import { type Amount, exactArithmetic as arithmetic, isExact, sign } from "./amount.js";
import { type Basis, basisText } from "./basis.js";
import type { ChoiceDefinition, Entries, EntryDefinition, GivenDefinition } from "./definition.js";
import type { DimensionName } from "./dimensions.js";
import { mostProblems, nearest, type Path, type Problem, problem, type ProblemCode, shown, type Trouble } from "./problems.js";
import { amountOf, type Quantity } from "./quantity.js";
import { howToWrite, readQuantity } from "./read-quantity.js";
import type { Wanted } from "./wording.js";
import { findUnit, type UnitCode, unitSymbol, unitSystem } from "./units.js";

/** A limit made ready: what a problem says of it, and whether an amount in base units keeps it. */
export interface Limit {
  readonly code: ProblemCode;
  readonly wanted: Wanted;
  readonly holds: (amount: Amount) => boolean;
}

/** What has limits: an input or a step. */
export type Limited = { readonly is: DimensionName; readonly whole?: boolean } & Readonly<Partial<Record<"above" | "atLeast" | "below" | "atMost", string | number>>>;

/** Each limit with the code of its problem, and which orders of the value and the limit it allows. */
const limitKinds = {
  above: ["tooLow", (order) => order > 0],
  atLeast: ["tooLow", (order) => order >= 0],
  below: ["tooHigh", (order) => order < 0],
  atMost: ["tooHigh", (order) => order <= 0],
} as const satisfies Record<string, readonly [ProblemCode, (order: number) => boolean]>;

/** A quantity that the author of a definition wrote: a default, a constant or a limit. */
export function writtenQuantity<D extends DimensionName>(dimension: D, text: string | number, where: string): Quantity<D> {
  const read = readQuantity(dimension, text, { path: [where] });
  if ("code" in read) throw new Error(problem(read).message);
  return read;
}

/** The limits of an input or a step, made ready. */
export function limitsOf(row: Limited, where: string): readonly Limit[] {
  const limits = (Object.keys(limitKinds) as (keyof typeof limitKinds)[]).flatMap((key): Limit[] => {
    const text = row[key];
    if (text === undefined) return [];
    const [code, holds] = limitKinds[key];
    const wanted: Wanted = { kind: "limit", limit: key, value: String(text) };
    if (text === 0) return [{ code, wanted, holds: (given) => holds(sign(given)) }];
    const amount = amountOf(writtenQuantity(row.is, text, where));
    return [{ code, wanted, holds: (given) => holds(arithmetic.compare(given, amount)) }];
  });
  return row.whole === true ? [...limits, whole] : limits;
}

const whole: Limit = { code: "notWhole", wanted: { kind: "whole" }, holds: (amount) => (isExact(amount) ? amount.isWhole() : arithmetic.compare(amount, arithmetic.floor(amount)) === 0) };

/** The first limit that an amount breaks. */
export function brokenLimit(limits: readonly Limit[], amount: Amount): Limit | undefined {
  for (const limit of limits) if (!limit.holds(amount)) return limit;
  return undefined;
}

/** The units a value is shown in, as codes of the table: one, or that of the United States and that of the SI. */
export type ShownUnits = readonly [UnitCode, ...UnitCode[]];

/** Reads the units a definition names. */
export function shownUnits({ is, unit = is }: { readonly is: DimensionName; readonly unit?: string | readonly string[] }): ShownUnits {
  const codes = [unit].flat().map((text) => {
    const code = findUnit(is, text);
    if (code === undefined) throw new Error(`"${text}" is no unit of ${is}`);
    return code;
  });
  return Object.freeze(codes) as readonly UnitCode[] as ShownUnits;
}

/** What a line tells of an input, a constant or a step, whatever its value. */
export interface Told<Shown = readonly UnitCode[]> {
  readonly name: string;
  readonly says: string;
  readonly symbol: string;
  readonly shown: Shown;
  readonly basis?: Basis | undefined;
}

/** What can be read of an input. */
type Value = Quantity | string | number | boolean;

/** What is wrong with one input; where it is, and what it is, are added. */
export type Fault = Pick<Trouble, "code" | "given" | "wanted" | "found">;

/** One input, made ready for reading. */
export interface Field extends Told, OfKind {
  readonly optional: boolean;
  readonly assumption: string;
}

/** What quantities and choices have each in their own way. */
interface OfKind {
  /** The units it is shown in; a choice has none. */
  readonly shown: readonly UnitCode[];
  readonly fallback: Value | undefined;
  /** How to write it. */
  readonly wanted: Wanted;
  readonly read: (given: unknown) => Value | Fault;
}

/** The inputs of a calculation or a composed function, made ready for reading. */
export interface Fields {
  readonly all: readonly Field[];
  readonly names: readonly string[];
  /** The inputs that exclude each other, under their common word. */
  readonly pairs: readonly { readonly word: string; readonly names: readonly string[] }[];
}

/** Makes the inputs of a composed function ready for reading: quantities and choices. */
export function fieldsOf(entries: Entries): Fields {
  return fieldsWith((row: EntryDefinition, name) => ("oneOf" in row ? choiceField(row) : quantityField(row, name)), entries);
}

/** Makes inputs ready for reading; a calculation, which has no choices, does not bring their reader. */
export function fieldsWith<Row extends EntryDefinition>(ofKind: (row: Row, name: string) => OfKind, entries: Readonly<Record<string, Row>>): Fields {
  const pairs = new Map<string, string[]>();
  const all = Object.entries(entries).map(([name, row]): Field => {
    if (row.either !== undefined) pairs.set(row.either, [...(pairs.get(row.either) ?? []), name]);
    const assumption = row.default === undefined ? "" : `${name} (${row.says}) taken as ${String(row.default)}: ${basisText(row.basis)}`;
    const { shown, fallback, wanted, read } = ofKind(row, name);
    const optional = row.optional === true || row.either !== undefined;
    // All alike in shape, which the engine reads fastest.
    return { name, says: row.says, symbol: "symbol" in row ? row.symbol : name, shown, basis: row.basis, optional, assumption, fallback, wanted, read };
  });
  return { all, names: Object.keys(entries), pairs: [...pairs].map(([word, names]) => ({ word, names })) };
}

/** A quantity as an input. */
export function quantityField(row: GivenDefinition, name: string): OfKind {
  const shown = shownUnits(row);
  const limits = limitsOf(row, name);
  const place = { path: [], propose: shown.map(unitSymbol) };
  return {
    shown,
    fallback: row.default === undefined ? undefined : writtenQuantity(row.is, row.default, name),
    wanted: howToWrite(row.is, place.propose, shown.length),
    read(value) {
      const read = readQuantity(row.is, value, place);
      if ("code" in read) return read;
      const broken = brokenLimit(limits, amountOf(read));
      if (broken === undefined) return read;
      const given = read.toString();
      const percent = row.is === "ratio" && read.unit === "ratio" && broken.code === "tooHigh" ? { percent: `${given} %` } : {};
      return { code: broken.code, given, wanted: { ...broken.wanted, ...percent } };
    },
  };
}

function choiceField(row: ChoiceDefinition): OfKind {
  const wanted: Wanted = { kind: "choice", of: row.oneOf.map(String) };
  const read = (given: unknown): Value | Fault => row.oneOf.find((one) => one === given) ?? { code: "notAChoice", given: shown(given), wanted };
  return { shown: Object.freeze([]), fallback: row.default, wanted, read };
}

/** What has been read of an input: the value, and whether it is a default. */
export interface ReadField {
  readonly value: Value | undefined;
  readonly assumed: boolean;
}

/** Everything that was read; the fields stand in the order of the definition. */
export interface ReadEntries {
  readonly read: readonly ReadField[];
  /** Which input of each pair was given. */
  readonly chosen: readonly string[];
  /** Whether some inputs are in units of the SI, and none in those of the United States. */
  readonly metric: boolean;
}

/** Reads the inputs of one call; everything that is wrong is added to the problems. */
export function readEntries({ all, names, pairs }: Fields, input: unknown, problems: Problem[]): ReadEntries {
  const add = (path: Path, fault: Fault, says?: string): void => void problems.push(problem({ ...fault, path, says }));
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    add([], { code: "wrongKind", given: shown(input), wanted: { kind: "object", of: names } });
    return { read: [], chosen: [], metric: false };
  }
  const given = (name: string): unknown => (Object.hasOwn(input, name) ? (input as Readonly<Record<string, unknown>>)[name] : undefined);
  for (const key of Object.keys(input).slice(0, mostProblems)) {
    if (names.includes(key)) continue;
    const near = nearest(key, names);
    add([key.slice(0, 80)], { code: "unknown", given: "", wanted: near === undefined ? { kind: "key", of: names } : { kind: "near", key: near } });
  }
  const read: ReadField[] = [];
  let [si, us] = [false, false];
  for (const field of all) {
    const value = given(field.name);
    if (value === undefined) {
      const { name, says, fallback, optional, wanted } = field;
      if (fallback === undefined && !optional) add([name], { code: "missing", given: "", wanted }, says);
      read.push({ value: fallback, assumed: fallback !== undefined });
      continue;
    }
    const found = field.read(value);
    const fault = typeof found === "object" && "code" in found;
    if (fault) add([field.name], found, field.says);
    else if (typeof found === "object") {
      const system = unitSystem(found.unit);
      if (system === "si") si = true;
      if (system === "us") us = true;
    }
    read.push({ value: fault ? undefined : found, assumed: false });
  }
  const chosen = pairs.flatMap(({ word, names }) => {
    const here = names.filter((name) => given(name) !== undefined);
    if (here.length !== 1) {
      add([word], { code: "either", given: here.join(" and "), wanted: { kind: "exactlyOne", of: names } });
    }
    return here;
  });
  return { read, chosen, metric: si && !us };
}
