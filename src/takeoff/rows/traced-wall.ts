import { exactArithmetic } from "../../core/amount.js";
import { amountOf, makeQuantity, type Quantity } from "../../core/quantity.js";
import { Trace, tracedIn } from "../../many/trace.js";
import { tracedWork } from "../../many/traced-work.js";
import { type TracedColumn, TracedRows, type WantedFigure } from "../../many/traced-rows.js";
import type { ReadAssembly, ReadJob } from "../job.js";
import { boughtOf } from "../lists/known-item.js";
import type { OrderLine } from "../order-line.js";
import { type TakeOff, type Taken, workOutJob } from "../take-job.js";
import { type Cells, fillWall, type WallPattern } from "./fill-wall.js";
import { readAgain } from "./read-elevation.js";
import { headOf, type LineHead, type RowLine, rowLine } from "./row-line.js";

/** An item of a traced wall, and which of the figures are its net and what is bought of it. */
export interface TracedItem {
  readonly item: string;
  readonly net: number;
  readonly bought: number | undefined;
}

/** A line of all rows of a block. */
interface LineColumns {
  readonly head: LineHead;
  readonly net: Float64Array;
  readonly toOrder: Float64Array;
  readonly packs: Float64Array | undefined;
}

/** A wall that was taken off with quantities that stand open, so that others are worked out as it was. */
export class TracedWall {
  readonly items: readonly TracedItem[];
  readonly rows: TracedRows;
  /** Which of the figures is the cost. */
  readonly cost: number | undefined;
  /** By line, which of the figures are its net, what is to be ordered, and its packs. */
  readonly #nets: readonly number[];
  readonly #toOrder: readonly number[];
  readonly #packs: readonly (number | undefined)[];
  readonly #heads: readonly LineHead[];
  #before: () => void = () => undefined;
  #columns: readonly LineColumns[] = [];

  constructor({ lines, priced }: Taken, trace: Trace, columns: readonly TracedColumn[], rows: number) {
    const figures: WantedFigure[] = [];
    const figure = (quantity: Quantity, unit = quantity.unit): number => figures.push({ quantity, unit }) - 1;
    this.#nets = lines.map(({ net, toOrder }) => figure(net, toOrder.unit));
    this.#toOrder = lines.map(({ toOrder }) => figure(toOrder));
    this.#packs = lines.map(({ packs }) => packs && figure(packs));
    this.items = lines.map((line, index): TracedItem => ({
      item: line.item,
      net: this.#nets[index] as number,
      bought: this.#packs[index] ?? (boughtOf(line) && this.#toOrder[index]),
    }));
    this.cost = priced && figure(priced.total);
    this.#heads = lines.map(headOf);
    this.rows = new TracedRows(trace, columns, figures, rows);
  }

  /** Calls before the rows that are held give way to others. */
  beforeNext(call: () => void): void {
    this.#before = call;
  }

  /** Works out a block of rows. */
  run(numbers: readonly Float64Array[], count: number): void {
    this.#before();
    this.rows.run(numbers, count);
    const { answers } = this.rows;
    this.#columns = this.#heads.map((head, index): LineColumns => {
      const [net, toOrder, packs] = [this.#nets[index], this.#toOrder[index], this.#packs[index]];
      return { head, net: answers[net as number] as Float64Array, toOrder: answers[toOrder as number] as Float64Array, packs: packs === undefined ? undefined : answers[packs] };
    });
  }

  /** The lines of a row of the block. */
  linesAt(place: number): readonly RowLine[] {
    const columns = this.#columns;
    const lines = new Array<RowLine>(columns.length);
    for (let index = 0; index < columns.length; index += 1) {
      const { head, net, toOrder, packs } = columns[index] as LineColumns;
      lines[index] = rowLine(head, net[place] as number, toOrder[place] as number, packs === undefined ? undefined : packs[place]);
    }
    return Object.freeze(lines);
  }
}

/** A row as it was taken off by itself, and what came out. */
export interface Sample {
  readonly cells: Cells;
  /** What was read in each of its columns. */
  readonly read: ReadonlyMap<string, unknown>;
  readonly answers: TakeOff;
}

/** Traces a wall; nothing where that cannot be done. */
export function traceWall(pattern: WallPattern, assembly: ReadAssembly, { cells, read, answers }: Sample, columns: readonly TracedColumn[], rows: number): TracedWall | undefined {
  try {
    const trace = new Trace();
    const open = columns.map(({ name, unit }): [string, Quantity] => {
      const held = read.get(name) as Quantity;
      return [name, makeQuantity(held.dimension, trace.input(name, amountOf(held)), unit)];
    });
    const job: ReadJob = { ...assembly, elevations: [readAgain(fillWall(pattern, { ...cells, ...Object.fromEntries(open) }).wall)] };
    const taken = workOutJob(job, tracedWork(trace), true);
    return areSame(taken, answers) ? new TracedWall(taken, trace, columns, rows) : undefined;
  } catch {
    // The row has been worked out by itself; what cannot be traced, whatever the reason, goes that way.
    return undefined;
  }
}

/** Whether a trace gives for its own row what came out for it. */
function areSame({ lines, priced }: Taken, answers: TakeOff): boolean {
  const same = (traced: Quantity | undefined, own: Quantity | undefined): boolean => {
    if (traced === undefined || own === undefined) return traced === own;
    const amount = amountOf(traced);
    return traced.dimension === own.dimension && exactArithmetic.compare(tracedIn(amount)?.sample ?? amount, amountOf(own)) === 0;
  };
  const linesAreSame = lines.length === answers.lines.length && lines.every((line, index) => {
    const own = answers.lines[index] as OrderLine;
    return line.item === own.item && line.toOrder.unit === own.toOrder.unit && same(line.net, own.net) && same(line.toOrder, own.toOrder) && same(line.packs, own.packs);
  });
  return linesAreSame && (priced === undefined) === (answers.cost === undefined);
}
