import type { Fraction } from "fraction.js";
import { type Amount, exact, exactArithmetic, isExact, readDigits } from "../core/amount.js";
import { amountOf, type Quantity } from "../core/quantity.js";
import { toBase } from "../core/unit-scale.js";
import type { UnitCode } from "../core/units.js";
import { rangeOf } from "./column.js";
import { FittedPlan } from "./fitted-plan.js";
import { type FlatProgram, slotValue } from "./flat-program.js";
import type { Plan, PlannedColumn } from "./plan.js";
import { type Trace, tracedIn } from "./trace.js";

/** An input of a trace: its name, and the unit of its numbers. */
export interface TracedColumn {
  readonly name: string;
  readonly unit: UnitCode;
}

/** What a trace is to give: a quantity that was worked out in it, and the unit its numbers are wanted in. */
export interface WantedFigure {
  readonly quantity: Quantity;
  readonly unit: UnitCode;
}

/** Whole numbers, one a row, that stand for so much each. */
export interface Wholes {
  readonly values: Float64Array;
  readonly scale: Fraction;
}

/** A figure that is wanted: its slot, or what it is in all rows. */
interface Figure {
  readonly amount: Amount;
  readonly slot: number | undefined;
  readonly exact: boolean;
  readonly constant: Float64Array | undefined;
}

/** Rows worked out as one row was that was traced, block by block. */
export class TracedRows {
  readonly #flat: FlatProgram;
  readonly #fixed: ReadonlyMap<string, Amount>;
  readonly #columns: readonly TracedColumn[];
  readonly #plan: FittedPlan;
  readonly #figures: readonly Figure[];
  readonly #ones: Float64Array;
  #numbers: readonly Float64Array[] = [];
  #done: Plan | undefined;
  #wholes: (Wholes | undefined)[] = [];
  #answers: readonly Float64Array[] = [];

  constructor(trace: Trace, columns: readonly TracedColumn[], wanted: readonly WantedFigure[], rows: number) {
    const steps: { readonly name: string; readonly unit: UnitCode; readonly slot: number }[] = [];
    this.#figures = wanted.map(({ quantity, unit }, index): Figure => {
      const amount = amountOf(quantity);
      const slot = tracedIn(amount)?.slot;
      if (slot !== undefined) steps.push({ name: String(index), unit, slot });
      return { amount, slot, exact: isExact(tracedIn(amount)?.sample ?? amount), constant: slot === undefined ? new Float64Array(rows).fill(quantity.toNumber(unit as never)) : undefined };
    });
    this.#ones = new Float64Array(rows).fill(1);
    this.#flat = { slots: trace.slots, steps };
    this.#fixed = trace.fixed;
    this.#columns = columns;
    const limits = { edges: [], whole: false };
    this.#plan = new FittedPlan({
      flat: this.#flat,
      rows,
      columns: columns.map(({ name, unit }): PlannedColumn => ({ name, unit, range: rangeOf(undefined, unit), denominator: 1, most: 1 })),
      fixed: trace.fixed,
      steps: steps.map(({ name, unit }) => ({ name, unit, limits })),
      guards: [...trace.guards.values()],
      roundings: new Map(),
    });
  }

  /** Works out a block of rows from the numbers of the columns, in their order. */
  run(numbers: readonly Float64Array[], count: number): void {
    const before = this.#done;
    this.#numbers = numbers;
    const done = (this.#done = this.#plan.run(numbers, count));
    if (done === undefined || done === before) return;
    let next = 0;
    this.#answers = this.#figures.map(({ constant }) => constant ?? (done.answers[next++] as Float64Array));
    this.#wholes = this.#figures.map(({ amount, slot }): Wholes | undefined => {
      const operand = slot === undefined ? { kind: "fixed" as const, amount } : done.operandAt(slot);
      if (operand.kind === "fixed") return isExact(operand.amount) ? { values: this.#ones, scale: operand.amount } : undefined;
      return operand.kind === "whole" ? operand : undefined;
    });
  }

  /** Whether the trace holds for a row of the block. */
  holds(row: number): boolean {
    return this.#done?.marks[row] === 0;
  }

  /** The numbers of what is wanted, in order, a number a row. */
  get answers(): readonly Float64Array[] {
    return this.#answers;
  }

  /** A figure as whole numbers, where it is held as such. */
  wholeOf(figure: number): Wholes | undefined {
    return this.#wholes[figure];
  }

  /** Whether a figure is exact in every row. */
  isExact(figure: number): boolean {
    return (this.#figures[figure] as Figure).exact;
  }

  /** A figure of a row, as the engine has it. */
  exactly(figure: number, row: number): Amount {
    const { amount, slot } = this.#figures[figure] as Figure;
    if (slot === undefined) return amount;
    const whole = this.wholeOf(figure);
    if (whole !== undefined) return whole.scale.mul(exact(BigInt(whole.values[row] as number)));
    const values: (Amount | undefined)[] = [];
    for (const [place, here] of this.#flat.slots.entries()) if (here.kind === "name") values[place] = this.#named(here.name, row);
    return slotValue(this.#flat, slot, values, exactArithmetic);
  }

  #named(name: string, row: number): Amount | undefined {
    const column = this.#columns.findIndex((one) => one.name === name);
    return column < 0 ? this.#fixed.get(name) : toBase(readDigits(String(this.#numbers[column]?.[row])), (this.#columns[column] as TracedColumn).unit);
  }
}
