import type { Amount } from "../core/amount.js";
import type { Calculation } from "../core/calculation.js";
import type { Definition, GivenDefinition } from "../core/definition.js";
import { deepFrozen } from "../core/frozen.js";
import { InputError, type Problem } from "../core/problems.js";
import { amountOf, type Quantity } from "../core/quantity.js";
import type { UnitCode } from "../core/units.js";
import { keptOf, type Kept } from "./kept.js";
import { quickReader } from "./quick-text.js";
import { type RowProblems, solveColumns } from "./solve-columns.js";
import { type AnswerUnits, type Many, manyOf, wantedUnits } from "./solve-many.js";

/** Rows that give the same inputs in the same units, as columns. */
interface Group {
  readonly rows: number[];
  /** The unit of each input in the order of the definition; nothing where it is left out. */
  readonly units: readonly (UnitCode | undefined)[];
  readonly columns: readonly number[][];
  /** Which inputs of pairs are given; nothing where the rows lack something. */
  readonly chosen: readonly string[] | undefined;
}

/** A place on the way to a group: one step for each input. */
interface Way {
  readonly next: Map<UnitCode | undefined, Way>;
  group?: Group;
}

/**
 * Works out a calculation for many rows, each an object as a single call takes it: texts with their units, such as the
 * rows of a sheet. The counts are those of the calculation itself; each row has its answers or all its problems.
 *
 * @param of - the calculation
 * @param rows - the inputs of each row by name
 * @param units - the units wanted for answers, where others than the first of the definition
 * @returns a column of numbers an answer, and the problems of rows that have none
 * @throws InputError where a unit that is wanted is none
 * @example
 * ```ts
 * const unit = { unitLength: "11-5/8 in", unitHeight: "3-5/8 in" };
 * const faces = solveRows(coursedFace, [{ ...unit, area: "312 ft2", depth: "3/4 in" }, { ...unit, area: "29 m2" }]);
 * faces.answers.unitsPerArea.values[0]; // 3
 * faces.problems[0]?.problems[0]?.code; // "missing"
 * ```
 */
export function solveRows<D extends Definition>(of: Calculation<D>, rows: readonly unknown[], units: AnswerUnits<D> = {}): Many<D> {
  const definition: Definition = deepFrozen(of.definition);
  const unitProblems: Problem[] = [];
  const wanted = wantedUnits(definition, units, unitProblems);
  if (unitProblems.length > 0) throw new InputError(definition.id, unitProblems);
  const kept = keptOf(definition);
  const { groups, others } = groupsOf(kept, definition, rows);
  const answers = kept.steps.map(({ name, unit }) => ({ name, unit: wanted.get(name) ?? unit, values: new Float64Array(rows.length).fill(NaN) }));
  const problems: RowProblems[] = [];
  for (const group of groups) {
    const part = solveColumns({
      definition,
      columns: kept.fields.names.flatMap((name, index) => (group.units[index] === undefined ? [] : [{ name, unit: group.units[index], numbers: group.columns[index] as number[] }])),
      fixed: defaultsOf(kept, group),
      chosen: group.chosen ?? [],
      count: group.rows.length,
      units: wanted,
      exactly: (row) => of.try(rows[group.rows[row] as number]),
    });
    for (const { row, problems: own } of part.problems) problems.push(Object.freeze({ row: group.rows[row] as number, problems: own }));
    answers.forEach(({ values }, index) => {
      const own = part.answers[index]?.values as Float64Array;
      group.rows.forEach((row, place) => (values[row] = own[place] as number));
    });
  }
  for (const row of others) {
    const attempt = of.try(rows[row]);
    if (!attempt.ok) problems.push(Object.freeze({ row, problems: attempt.problems }));
    else for (const { name, unit, values } of answers) values[row] = (attempt.solution.answers as Readonly<Record<string, Quantity>>)[name]?.toNumber(unit) ?? NaN;
  }
  problems.sort((a, b) => a.row - b.row);
  return manyOf(rows.length, { answers, problems }) as Many<D>;
}

/** Sorts rows by what they give in which units; the others are those that only the full reader can read. */
function groupsOf({ fields }: Kept, definition: Definition, rows: readonly unknown[]): { readonly groups: readonly Group[]; readonly others: readonly number[] } {
  const first: Way = { next: new Map() };
  const [groups, others]: [Group[], number[]] = [[], []];
  const inputs = fields.names.map((name) => ({ name, reader: quickReader((definition.given[name] as GivenDefinition).is) }));
  const numbers = inputs.map(() => 0);
  const wayOf = (row: unknown): Way | undefined => {
    if (typeof row !== "object" || row === null || Array.isArray(row)) return undefined;
    let [way, found] = [first, 0];
    for (let index = 0; index < inputs.length; index += 1) {
      const { name, reader } = inputs[index] as (typeof inputs)[number];
      const given: unknown = Object.hasOwn(row, name) ? (row as Readonly<Record<string, unknown>>)[name] : undefined;
      if (given !== undefined) {
        if (typeof given !== "string" || !reader.read(given)) return undefined;
        numbers[index] = reader.number;
        found += 1;
      }
      way = step(way, given === undefined ? undefined : reader.unit);
    }
    return Object.keys(row).length === found ? way : undefined;
  };
  rows.forEach((row, index) => {
    const way = wayOf(row);
    if (way !== undefined && way.group === undefined) groups.push((way.group = groupAt(first, way, fields)));
    const group = way?.group;
    if (group?.chosen === undefined) others.push(index);
    else {
      group.rows.push(index);
      for (let input = 0; input < numbers.length; input += 1) if (group.units[input] !== undefined) group.columns[input]?.push(numbers[input] ?? 0);
    }
  });
  return { groups: groups.filter(({ chosen }) => chosen !== undefined), others };
}

function step(way: Way, unit: UnitCode | undefined): Way {
  const known = way.next.get(unit);
  if (known !== undefined) return known;
  const made: Way = { next: new Map() };
  way.next.set(unit, made);
  return made;
}

/** The group at the end of a way; whether its rows give all that is needed, and one of each pair. */
function groupAt(first: Way, end: Way, { all, pairs }: Kept["fields"]): Group {
  const trail = (way: Way): (UnitCode | undefined)[] | undefined => {
    if (way === end) return [];
    for (const [unit, next] of way.next) {
      const rest = trail(next);
      if (rest !== undefined) return [unit, ...rest];
    }
    return undefined;
  };
  const units = trail(first) ?? [];
  const isGiven = (name: string): boolean => units[all.findIndex((field) => field.name === name)] !== undefined;
  const complete = all.every(({ name, fallback, optional }) => isGiven(name) || fallback !== undefined || optional);
  const chosen = pairs.map(({ names }) => names.filter(isGiven));
  return { rows: [], units, columns: units.map(() => []), chosen: complete && chosen.every(({ length }) => length === 1) ? chosen.flat() : undefined };
}

function defaultsOf({ fields }: Kept, { units }: Group): ReadonlyMap<string, Amount> {
  return new Map(fields.all.flatMap(({ name, fallback }, index): [string, Amount][] => (units[index] === undefined && typeof fallback === "object" ? [[name, amountOf(fallback)]] : [])));
}
