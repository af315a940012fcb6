import type { Amount } from "../core/amount.js";
import type { Calculation } from "../core/calculation.js";
import type { Definition, Inputs } from "../core/definition.js";
import type { DimensionName } from "../core/dimensions.js";
import { deepFrozen } from "../core/frozen.js";
import { InputError, type Problem, problem, shown } from "../core/problems.js";
import { amountOf, type Quantity } from "../core/quantity.js";
import type { Fault, Field } from "../core/fields.js";
import { readEntries } from "../core/read-entries.js";
import { readQuantity } from "../core/read-quantity.js";
import { findUnit, type SpellingOf, type UnitCode, unitsOf, unitSymbol } from "../core/units.js";
import { keptOf } from "./kept.js";
import { say } from "./refusals.js";
import { type ColumnAnswers, type RowProblems, solveColumns } from "./solve-columns.js";

/** The numbers of a column. Not a `Float32Array`: 0.1 in it is 0.10000000149. */
export type Numbers = readonly number[] | Float64Array | Int8Array | Uint8Array | Uint8ClampedArray | Int16Array | Uint16Array | Int32Array | Uint32Array;

/** A column: its numbers, each read by its shortest text (0.1 is one tenth), and their unit; a ratio and a count need none. */
export type Column<D extends DimensionName> = D extends "ratio" | "count"
  ? { readonly values: Numbers; readonly unit?: SpellingOf<D> }
  : { readonly values: Numbers; readonly unit: SpellingOf<D> };

type Entry<G extends Definition["given"], K, One> = One extends undefined ? One : K extends keyof G ? One | Column<G[K]["is"]> : One;

/** Inputs of many rows: under each name a column, or what a single call takes, which then stands for all rows. */
export type Columns<D extends Definition> = Inputs<D["given"]> extends infer All ? (All extends unknown ? { readonly [K in keyof All]: Entry<D["given"], K, All[K]> } : never) : never;

/** The unit wanted for answers, by name. */
export type AnswerUnits<D extends Definition> = { readonly [K in keyof D["steps"]]?: SpellingOf<D["steps"][K]["is"]> };

/** One answer of all rows. */
export interface AnswerColumn {
  /** The unit of its numbers, by its code. */
  readonly unit: UnitCode;
  /** A number a row, NaN in the rows that have problems. */
  readonly values: Float64Array;
}

/** The answers of many rows, and what is wrong with those that have none. */
export interface Many<D extends Definition = Definition> {
  readonly rows: number;
  readonly answers: { readonly [K in keyof D["steps"]]: AnswerColumn };
  /** The rows without answers, in order, each with all its problems; they are those that `.try` gives. */
  readonly problems: readonly RowProblems[];
}

/** The units wanted, read; what is none is a problem. */
export function wantedUnits({ steps }: Definition, units: Readonly<Record<string, string | undefined>>, problems: Problem[]): ReadonlyMap<string, UnitCode> {
  return new Map(
    Object.entries(units).flatMap(([name, text]): [string, UnitCode][] => {
      const is = Object.hasOwn(steps, name) ? steps[name]?.is : undefined;
      if (is === undefined) problems.push(problem({ code: "unknown", path: ["units", name], given: "", wanted: { kind: "key", of: Object.keys(steps) } }));
      if (is === undefined || text === undefined) return [];
      const code = findUnit(is, text);
      if (code === undefined) problems.push(problem({ code: "unknownUnit", path: ["units", name], given: shown(text), wanted: { kind: "choice", of: unitsOf(is).map(unitSymbol) } }));
      return code === undefined ? [] : [[name, code]];
    }),
  );
}

/** What was worked out, under the names of the answers. */
export function manyOf(rows: number, { answers, problems }: ColumnAnswers): Many {
  const named = Object.fromEntries(answers.map(({ name, unit, values }) => [name, Object.freeze({ unit, values })]));
  return Object.freeze({ rows, answers: Object.freeze(named), problems: Object.freeze(problems) });
}

interface GivenColumn {
  readonly values: Numbers;
  readonly unit?: unknown;
}

function isColumn(given: unknown): given is GivenColumn {
  return typeof given === "object" && given !== null && "values" in given && !("value" in given);
}

function hasNumbers({ values }: GivenColumn): boolean {
  return Array.isArray(values) || (ArrayBuffer.isView(values) && !(values instanceof Float32Array) && !(values instanceof DataView) && !(values instanceof BigInt64Array) && !(values instanceof BigUint64Array));
}

/**
 * Works out a calculation for many rows of plain numbers at once, at about the cost of plain numbers. Counts are those of
 * the calculation itself, always; other answers are doubles within 1e-12 of theirs.
 *
 * @param of - the calculation
 * @param columns - under each name of its inputs a column of numbers with their unit, or one value for all rows
 * @param units - the units wanted for answers, where others than the first of the definition
 * @returns a column of numbers an answer, and the problems of rows that have none
 * @throws InputError where the columns themselves cannot be read: a unit, a missing input, different lengths
 * @example
 * ```ts
 * const faces = solveMany(coursedFace, { area: { values: [312, 48.5], unit: "ft2" }, unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: { values: [0.75, 0], unit: "in" } });
 * faces.answers.volume.unit; // "ft3"
 * faces.answers.volume.values[0]; // 2.38037109375
 * faces.problems[0]?.row; // 1
 * faces.problems[0]?.problems[0]?.code; // "tooLow"
 * ```
 */
export function solveMany<D extends Definition>(of: Calculation<D>, columns: Columns<D>, units: AnswerUnits<D> = {}): Many<D> {
  const definition: Definition = deepFrozen(of.definition);
  const problems: Problem[] = [];
  const { fields } = keptOf(definition);
  const all = fields.all.map((field) => columnField(field, definition));
  const entries = readEntries({ ...fields, all }, columns, problems);
  const wanted = wantedUnits(definition, units, problems);
  const given = columns as Readonly<Record<string, unknown>>;
  const names = problems.length > 0 ? [] : fields.names.filter((name) => Object.hasOwn(given, name) && isColumn(given[name]));
  const lists = names.map((name) => (given[name] as GivenColumn).values);
  const count = lists[0]?.length ?? 0;
  lists.forEach((list, index) => {
    if (list.length !== count) {
      const at = names[index] ?? "";
      problems.push(problem({ code: "refused", path: [at], given: "", wanted: say("columnsOfOneLength", { count: list.length, other: names[0] ?? "", otherCount: count }) }));
    }
  });
  if (problems.length === 0 && names.length === 0) problems.push(problem({ code: "missing", path: [], says: "columns", given: "", wanted: say("giveColumns") }));
  if (problems.length > 0) throw new InputError(definition.id, problems);
  const fixed = new Map<string, Amount>();
  fields.all.forEach(({ name }, index) => {
    const value = entries.values[index];
    if (typeof value === "object" && !names.includes(name)) fixed.set(name, amountOf(value));
  });
  const unitOf = (name: string): UnitCode => (entries.values[fields.names.indexOf(name)] as Quantity).unit;
  const worked = solveColumns({
    definition,
    columns: names.map((name, index) => ({ name, unit: unitOf(name), numbers: lists[index] as Numbers })),
    fixed,
    chosen: entries.chosen,
    count,
    units: wanted,
    exactly: (row) => of.try(Object.fromEntries(Object.entries(given).map(([name, one]) => [name, isColumn(one) ? cell(one, row, unitOf(name)) : one]))),
  });
  return manyOf(count, worked) as Many<D>;
}

/** One number of a column as a single call takes it. */
function cell({ values }: GivenColumn, row: number, unit: UnitCode): unknown {
  return { value: values[row], unit: unitSymbol(unit) };
}

/** An input that may be a column: of that only the unit is read here, as that of a nought. */
function columnField(field: Field, { given }: Definition): Field {
  const is = given[field.name]?.is as DimensionName;
  const read = (value: unknown): Quantity | Fault => {
    if (!isColumn(value)) return field.read(value) as Quantity | Fault;
    if (!hasNumbers(value)) return { code: "wrongKind", given: shown(value.values), wanted: say("giveNumbers") };
    return readQuantity(is, value.unit === undefined ? (is === "ratio" || is === "count" ? 0 : "0") : { value: 0, unit: value.unit }, { path: [] });
  };
  return { ...field, read };
}
