import type { Amount } from "../core/amount.js";
import type { Definition } from "../core/definition.js";
import type { Problem } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import type { Attempt } from "../core/solution.js";
import type { UnitCode } from "../core/units.js";
import { rangeOf } from "./column.js";
import { FittedPlan } from "./fitted-plan.js";
import { flatOf, keptOf } from "./kept.js";
import type { PlannedColumn } from "./plan.js";

/** The rows of a block: enough that an operation costs what its numbers cost, few enough that all of them stay near the processor. */
const blockRows = 512;

/** A column of numbers in one unit; what is no number in it is NaN. */
export interface NumberColumn {
  readonly name: string;
  readonly unit: UnitCode;
  readonly numbers: ArrayLike<unknown>;
}

/** Rows that share their units. */
export interface ColumnJob {
  readonly definition: Definition;
  readonly columns: readonly NumberColumn[];
  readonly fixed: ReadonlyMap<string, Amount>;
  readonly chosen: readonly string[];
  readonly count: number;
  /** The units wanted for answers, where others than the first of the definition. */
  readonly units: ReadonlyMap<string, UnitCode>;
  /** One row worked out exactly, or what is wrong with it. */
  readonly exactly: (row: number) => Attempt<unknown>;
}

/** A row without an answer, and why. */
export interface RowProblems {
  /** Counted from 0. */
  readonly row: number;
  readonly problems: readonly Problem[];
}

/** The answers of each step by row, NaN where there is none, and the rows that have none. */
export interface ColumnAnswers {
  readonly answers: readonly { readonly name: string; readonly unit: UnitCode; readonly values: Float64Array }[];
  readonly problems: readonly RowProblems[];
}

/** Works out rows block by block in plain numbers, and exactly those that plain numbers cannot answer for. */
export function solveColumns({ definition, columns, fixed, chosen, count, units, exactly }: ColumnJob): ColumnAnswers {
  const known = keptOf(definition);
  const steps = known.steps.map(({ name, unit, limits }) => ({ name, unit: units.get(name) ?? unit, limits }));
  const answers = steps.map(({ name, unit }) => ({ name, unit, values: new Float64Array(count) }));
  const problems: RowProblems[] = [];
  const rows = Math.min(count, blockRows);
  const blocks = columns.map(({ numbers }) => blockReader(numbers, rows));
  const planned = columns.map(({ name, unit }): PlannedColumn => ({ name, unit, range: rangeOf(known.inputEdges.get(name), unit), denominator: 1, most: 1 }));
  const wanted = { flat: flatOf(known, definition, chosen), columns: planned, fixed: new Map([...known.constants, ...fixed]), steps, roundings: new Map<number, number>() };
  const plan = new FittedPlan(wanted, () => rows);
  const oneExactly = (row: number): void => {
    const attempt = exactly(row);
    if (!attempt.ok) problems.push(Object.freeze({ row, problems: attempt.problems }));
    for (const { name, unit, values } of answers) {
      values[row] = attempt.ok ? (attempt.solution.answers as Readonly<Record<string, Quantity>>)[name]?.toNumber(unit) ?? NaN : NaN;
    }
  };

  for (let start = 0; start < count; start += rows) {
    const size = Math.min(rows, count - start);
    const done = plan.run(blocks.map((block) => block(start, size)), size);
    answers.forEach(({ values }, index) => {
      const block = done?.answers[index];
      if (block !== undefined) values.set(size === block.length ? block : block.subarray(0, size), start);
    });
    for (let i = 0; i < size; i += 1) if (done === undefined || done.marks[i] === 1) oneExactly(start + i);
  }
  return { answers, problems };
}

/** Gives the numbers of a block as doubles. */
function blockReader(numbers: ArrayLike<unknown>, rows: number): (start: number, size: number) => Float64Array {
  if (numbers instanceof Float64Array) return (start, size) => numbers.subarray(start, start + size);
  const block = new Float64Array(rows);
  return (start, size) => {
    for (let i = 0; i < size; i += 1) {
      const number = numbers[start + i];
      block[i] = typeof number === "number" ? number : NaN;
    }
    return block;
  };
}
