import type { Fraction } from "../core/fraction.js";
import { type Amount, exactArithmetic, isExact, readDigits } from "../core/amount.js";
import { amountOf, type Quantity } from "../core/quantity.js";
import { toBase } from "../core/unit-scale.js";
import type { UnitCode } from "../core/units.js";
import { rangeOf } from "./column.js";
import { wholeAt } from "./exact-rows.js";
import { FittedPlan } from "./fitted-plan.js";
import { type FlatProgram, type Slot, slotValue } from "./flat-program.js";
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

/** A figure that is wanted: its slot, or what it is in all rows; whether it is exact. */
type Figure = { readonly exact: boolean } & ({ readonly slot: number } | { readonly slot: undefined; readonly amount: Amount; readonly constant: Float64Array });

/** Few rows want little room: there may be many traces. */
function roomFor(count: number): number {
  return count <= 16 ? 16 : count <= 64 ? 64 : count;
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
      const traced = tracedIn(amount);
      if (traced === undefined) return { exact: isExact(amount), slot: undefined, amount, constant: new Float64Array(rows).fill(quantity.toNumber(unit)) };
      steps.push({ name: String(index), unit, slot: traced.slot });
      return { exact: isExact(traced.sample), slot: traced.slot };
    });
    this.#ones = new Float64Array(rows).fill(1);
    const guards = [...trace.guards.values()];
    this.#flat = { slots: neededSlots(trace.slots, [...steps, ...guards].map(({ slot }) => slot)), steps };
    this.#fixed = trace.fixed;
    this.#columns = columns;
    const limits = { edges: [], whole: false };
    const planned = columns.map(({ name, unit }): PlannedColumn => ({ name, unit, range: rangeOf(undefined, unit), denominator: 1, most: 1 }));
    this.#plan = new FittedPlan(
      { flat: this.#flat, columns: planned, fixed: trace.fixed, steps: steps.map(({ name, unit }) => ({ name, unit, limits })), guards, roundings: new Map() },
      (count) => Math.min(rows, roomFor(count)),
    );
  }

  /** Works out a block of rows from the numbers of the columns, in their order. */
  run(numbers: readonly Float64Array[], count: number): void {
    const before = this.#done;
    const done = (this.#done = this.#plan.run(numbers, count));
    if (done !== undefined && done !== before) this.#take(done);
    // What is not held as whole numbers may be asked for exactly when the numbers have been written over.
    if (this.#wholes.includes(undefined)) this.#numbers = numbers.map((some) => some.slice(0, count));
  }

  #take(done: Plan): void {
    let next = 0;
    this.#answers = this.#figures.map((figure) => (figure.slot === undefined ? figure.constant : (done.answers[next++] as Float64Array)));
    this.#wholes = this.#figures.map((figure): Wholes | undefined => {
      const operand = figure.slot === undefined ? { kind: "fixed" as const, amount: figure.amount } : done.operandAt(figure.slot);
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
    const wanted = this.#figures[figure] as Figure;
    if (wanted.slot === undefined) return wanted.amount;
    const whole = this.wholeOf(figure);
    if (whole !== undefined) return wholeAt(whole, row);
    const values: (Amount | undefined)[] = [];
    for (const [place, here] of this.#flat.slots.entries()) if (here.kind === "name") values[place] = this.#named(here.name, row);
    return slotValue(this.#flat, wanted.slot, values, exactArithmetic);
  }

  #named(name: string, row: number): Amount | undefined {
    const column = this.#columns.findIndex((one) => one.name === name);
    return column < 0 ? this.#fixed.get(name) : toBase(readDigits(String(this.#numbers[column]?.[row])), (this.#columns[column] as TracedColumn).unit);
  }
}

/** What can fail is worked out in any case: a row in which it fails has a problem. */
const failing: readonly string[] = ["divide", "power", "sqrt", "ln", "log10", "exp", "asin"];

/** The slots that something wanted is worked out from; in the place of others stands a number that costs nothing. */
function neededSlots(slots: readonly Slot[], wanted: readonly number[]): readonly Slot[] {
  const needed = new Set(wanted);
  for (let place = slots.length - 1; place >= 0; place -= 1) {
    const slot = slots[place] as Slot;
    if (slot.kind !== "operation" || !(needed.has(place) || canFail(slot, slots))) continue;
    for (const one of [place, slot.left, slot.right]) needed.add(one);
  }
  return slots.map((slot, place) => (needed.has(place) ? slot : { kind: "literal", text: "0" }));
}

/** Whether an operation may have no value in some row; to divide by what is the same in all rows went well in the first. */
function canFail({ code, right }: Extract<Slot, { readonly kind: "operation" }>, slots: readonly Slot[]): boolean {
  const by = slots[right];
  return failing.includes(code) && !(code === "divide" && by?.kind === "name" && /^[=~]/.test(by.name));
}
