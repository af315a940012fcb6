import type { Amount } from "./amount.js";
import { exactArithmetic as arithmetic } from "./amount.js";
import { basisText } from "./basis.js";
import type { ChoiceDefinition, Entries, GivenDefinition } from "./definition.js";
import type { DimensionName } from "./dimensions.js";
import { nearest, type Problem, problem, type ProblemCode, shown } from "./problems.js";
import { amountOf, type Quantity } from "./quantity.js";
import { readQuantity } from "./read-quantity.js";
import { findUnit, type System, type UnitCode, unitSymbol, unitSystem } from "./units.js";

/** A limit made ready: its amount in base units, and how a message says it. */
export interface Limit {
  readonly amount: Amount;
  readonly code: ProblemCode;
  readonly says: string;
  readonly holds: (order: number) => boolean;
}

/** What has limits: an input or a step. */
type Limited = { readonly is: DimensionName } & Readonly<Partial<Record<"above" | "atLeast" | "below" | "atMost", string | number>>>;

const limitKinds = [
  { key: "above", says: "above", code: "tooLow", holds: (order: number) => order > 0 },
  { key: "atLeast", says: "at least", code: "tooLow", holds: (order: number) => order >= 0 },
  { key: "below", says: "below", code: "tooHigh", holds: (order: number) => order < 0 },
  { key: "atMost", says: "at most", code: "tooHigh", holds: (order: number) => order <= 0 },
] as const;

/** A quantity that the author of a definition wrote: a default, a constant or a limit. */
export function writtenQuantity<D extends DimensionName>(dimension: D, text: string | number, where: string): Quantity<D> {
  const read = readQuantity(dimension, text, { path: [where] });
  if ("code" in read) throw new Error(problem(read).message);
  return read;
}

/** The limits of an input or a step, made ready. */
export function limitsOf(row: Limited, where: string): readonly Limit[] {
  return limitKinds.flatMap(({ key, says, code, holds }) => {
    const text = row[key];
    if (text === undefined) return [];
    const amount = text === 0 ? arithmetic.literal("0") : amountOf(writtenQuantity(row.is, text, where));
    return [{ amount, code, says: `${says} ${String(text)}`, holds }];
  });
}

/** The first limit that an amount breaks. */
export function brokenLimit(limits: readonly Limit[], amount: Amount): Limit | undefined {
  return limits.find((limit) => !limit.holds(arithmetic.compare(amount, limit.amount)));
}

/** The units a value is shown in, as codes of the table: one, or that of the United States and that of the SI. */
export function shownUnits(row: { readonly is: DimensionName; readonly unit?: string | readonly string[] }): readonly UnitCode[] {
  const { is, unit } = row;
  if (unit === undefined) {
    if (is !== "ratio" && is !== "count") throw new Error(`${is} needs a unit to be shown in`);
    return Object.freeze([is]);
  }
  const codes = (typeof unit === "string" ? [unit] : unit).map((text) => {
    const code = findUnit(is, text);
    if (code === undefined) throw new Error(`"${text}" is no unit of ${is}`);
    return code;
  });
  return Object.freeze(codes);
}

/** One input, made ready for reading. */
export type Field = QuantityField | ChoiceField;

interface QuantityField {
  readonly kind: "quantity";
  readonly name: string;
  readonly row: GivenDefinition;
  readonly shown: readonly UnitCode[];
  readonly propose: readonly string[];
  readonly limits: readonly Limit[];
  readonly fallback: Quantity | undefined;
  readonly optional: boolean;
  readonly assumption: string;
}

interface ChoiceField {
  readonly kind: "choice";
  readonly name: string;
  readonly row: ChoiceDefinition;
  readonly fallback: string | number | boolean | undefined;
  readonly optional: boolean;
  readonly assumption: string;
}

/** The inputs of a calculation or a composed function, made ready for reading. */
export interface Fields {
  readonly all: readonly Field[];
  /** The inputs that exclude each other, under their common word. */
  readonly pairs: readonly { readonly word: string; readonly names: readonly string[] }[];
}

/** Makes the inputs of a calculation or a composed function ready for reading. */
export function fieldsOf(entries: Entries): Fields {
  const all = Object.entries(entries).map(([name, row]): Field => {
    const optional = row.optional === true;
    const assumption = row.default === undefined || row.basis === undefined ? "" : `${name} (${row.says}) taken as ${String(row.default)}: ${basisText(row.basis)}`;
    if ("oneOf" in row) return { kind: "choice", name, row, fallback: row.default, optional, assumption };
    const shown = shownUnits(row);
    const fallback = row.default === undefined ? undefined : writtenQuantity(row.is, row.default, name);
    return { kind: "quantity", name, row, shown, propose: shown.map(unitSymbol), limits: limitsOf(row, name), fallback, optional, assumption };
  });
  const words = new Set(all.flatMap((field) => eitherOf(field) ?? []));
  const named = (word: string): string[] => all.flatMap((field) => (eitherOf(field) === word ? [field.name] : []));
  return { all, pairs: [...words].map((word) => ({ word, names: named(word) })) };
}

/** The word an input shares with those that exclude it. */
function eitherOf(field: Field): string | undefined {
  return field.row.either;
}

/** What has been read of an input: the value, and whether it is a default. */
export interface ReadField {
  readonly value: Quantity | string | number | boolean | undefined;
  readonly assumed: boolean;
}

/** Everything that was read; the fields stand in the order of the definition. */
export interface ReadEntries {
  readonly read: readonly ReadField[];
  /** Which input of each pair was given. */
  readonly chosen: readonly string[];
  /** The system of units the inputs are in: SI where some are and none is of the United States. */
  readonly system: System | undefined;
}

/** Reads the inputs of one call; everything that is wrong is added to the problems. */
export function readEntries({ all: fields, pairs }: Fields, input: unknown, problems: Problem[]): ReadEntries {
  const nothing: ReadEntries = { read: [], chosen: [], system: undefined };
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    const names = fields.map(({ name }) => name).join(", ");
    problems.push(problem({ code: "wrongKind", path: [], given: shown(input), wanted: `give an object with ${names}` }));
    return nothing;
  }
  const given = input as Readonly<Record<string, unknown>>;
  unknownKeys(fields, given, problems);
  const read = fields.map((field) => readField(field, given, problems));
  const chosen = pairs.flatMap(({ word, names }) => choose(word, names, given, problems));
  return { read, chosen, system: systemOf(read) };
}

function unknownKeys(fields: readonly Field[], given: object, problems: Problem[]): void {
  for (const key of Object.keys(given)) {
    if (fields.some(({ name }) => name === key)) continue;
    const near = nearest(key, fields.map(({ name }) => name));
    const wanted = near === undefined ? `there are ${fields.map(({ name }) => name).join(", ")}` : `did you mean ${near}?`;
    problems.push(problem({ code: "unknown", path: [key.slice(0, 80)], given: "", wanted }));
  }
}

function valueAt(given: Readonly<Record<string, unknown>>, name: string): unknown {
  return Object.hasOwn(given, name) ? given[name] : undefined;
}

function readField(field: Field, given: Readonly<Record<string, unknown>>, problems: Problem[]): ReadField {
  const { name, row, fallback } = field;
  const value = valueAt(given, name);
  if (value === undefined) {
    const mayBeAbsent = field.optional || eitherOf(field) !== undefined;
    if (fallback === undefined && !mayBeAbsent) problems.push(problem({ code: "missing", path: [name], says: row.says, given: "", wanted: wantedOf(field) }));
    return { value: fallback, assumed: fallback !== undefined };
  }
  return { value: field.kind === "choice" ? readChoice(field, value, problems) : readGiven(field, value, problems), assumed: false };
}

function wantedOf(field: Field): string {
  if (field.kind === "choice") return `write one of ${field.row.oneOf.map(String).join(", ")}`;
  return field.row.is === "count" || field.row.is === "ratio" ? "write a number" : `write a number and one of ${field.propose.join(", ")}`;
}

function readChoice(field: ChoiceField, value: unknown, problems: Problem[]): string | number | boolean | undefined {
  const found = field.row.oneOf.find((one) => one === value);
  if (found === undefined) problems.push(problem({ code: "notAChoice", path: [field.name], says: field.row.says, given: shown(value), wanted: wantedOf(field) }));
  return found;
}

function readGiven(field: QuantityField, value: unknown, problems: Problem[]): Quantity | undefined {
  const { name, row } = field;
  const read = readQuantity(row.is, value, { path: [name], says: row.says, propose: field.propose });
  if ("code" in read) {
    problems.push(problem(read));
    return undefined;
  }
  const broken = brokenLimit(field.limits, amountOf(read));
  if (broken === undefined) return read;
  const percent = row.is === "ratio" && read.unit === "ratio" && broken.code === "tooHigh" ? `; did you mean "${read.toString()} %"?` : "";
  problems.push(problem({ code: broken.code, path: [name], says: row.says, given: read.toString(), wanted: `${broken.says}${percent}` }));
  return undefined;
}

/** Of the inputs that exclude each other, exactly one is wanted. */
function choose(word: string, names: readonly string[], input: Readonly<Record<string, unknown>>, problems: Problem[]): readonly string[] {
  const given = names.filter((name) => valueAt(input, name) !== undefined);
  if (given.length !== 1) {
    const wanted = `give exactly one of ${names.join(" and ")}`;
    problems.push(problem({ code: "either", path: [word], given: given.length === 0 ? "none is given" : `${given.join(" and ")} exclude each other`, wanted }));
  }
  return given;
}

function systemOf(read: readonly ReadField[]): System | undefined {
  let metric = false;
  for (const { value, assumed } of read) {
    if (assumed || typeof value !== "object") continue;
    const system = unitSystem(value.unit);
    if (system === "us") return "us";
    metric ||= system === "si";
  }
  return metric ? "si" : undefined;
}
