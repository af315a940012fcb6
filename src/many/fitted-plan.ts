import { NoValue } from "../core/amount.js";
import { denominatorFor } from "./column.js";
import { BeyondPlain } from "./operands.js";
import { type Plan, planFor, type PlannedColumn, type Wanted } from "./plan.js";

/** A plan that is made anew where the numbers of a block do not fit it. */
export class FittedPlan {
  readonly #wanted: Omit<Wanted, "rows">;
  readonly #roomFor: (count: number) => number;
  #plan: Plan | undefined;
  #rows = 0;

  /**
   * @param wanted - what is to be planned
   * @param roomFor - for how many rows there is to be room, where a block has so many
   */
  constructor(wanted: Omit<Wanted, "rows">, roomFor: (count: number) => number) {
    this.#wanted = wanted;
    this.#roomFor = roomFor;
  }

  /** Works out a block; nothing where plain numbers cannot do it at all. */
  run(numbers: readonly Float64Array[], count: number): Plan | undefined {
    try {
      for (;;) {
        const current = this.#read(numbers, count);
        if (current.run(count)) return current;
        this.#plan = undefined;
      }
    } catch (error) {
      if (error instanceof BeyondPlain || error instanceof NoValue) return undefined;
      throw error;
    }
  }

  /** Reads a block; where a column does not fit the plan, a new plan is made that fits. */
  #read(numbers: readonly Float64Array[], count: number): Plan {
    const { columns } = this.#wanted;
    if (this.#rows === 0) for (const [index, column] of columns.entries()) widen(column, numbers[index] as Float64Array, count);
    if (this.#rows < count) [this.#rows, this.#plan] = [this.#roomFor(count), undefined];
    for (;;) {
      const plan = (this.#plan ??= planFor({ ...this.#wanted, rows: this.#rows }));
      plan.marks.fill(0);
      const misfits = columns.filter((column, index) => !plan.read(column, numbers[index] as Float64Array, count));
      if (misfits.length === 0) return plan;
      for (const column of misfits) widen(column, numbers[columns.indexOf(column)] as Float64Array, count);
      this.#plan = undefined;
    }
  }
}

/** Makes room in what is planned of a column for the numbers of a block. */
function widen(column: PlannedColumn, numbers: Float64Array, count: number): void {
  const denominator = denominatorFor(numbers, column.denominator, column.range, count);
  const { least, most: highest } = column.range;
  let most = 1;
  for (const number of numbers.subarray(0, count)) if (number >= least && number <= highest) most = Math.max(most, Math.abs(number));
  column.most = 2 ** Math.ceil(Math.log2(Math.max(column.most / column.denominator, most) * Math.max(1, denominator)));
  column.denominator = denominator;
}
