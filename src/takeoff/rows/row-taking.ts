import { type Problem, problem } from "../../core/problems.js";
import type { Solution } from "../../core/solution.js";
import type { ReadAssembly, ReadJob } from "../job.js";
import type { TakeOff } from "../take-job.js";
import { takeOffOfRead } from "../take-read.js";
import { type Cells, cellOf, fillWall, type FromColumn, problemOfRow, valueAt } from "./fill-wall.js";
import type { Form } from "./form.js";
import { readAgain, readElevation } from "./read-elevation.js";
import { readRow, type RowRead } from "./read-row.js";
import { mostRows } from "./row-blocks.js";
import { rowLinesOf } from "./row-line.js";
import type { Totals } from "./row-totals.js";
import type { RowOptions, TakenRow } from "./row-types.js";
import { traceWall } from "./traced-wall.js";
import { WallColumns } from "./wall-columns.js";
import { WorkedRow } from "./worked-row.js";

/** For how many milliseconds rows are worked on before others get their turn: a button to stop, a picture of progress. */
const turn = 50;
/** So many ways to work out rows are kept: each holds the numbers of a block. */
const mostTraces = 256;

/** Takes off rows block by block: those that are like others before them together in plain numbers, the rest one by one. */
export class RowTaking {
  readonly #assembly: ReadAssembly;
  readonly #options: RowOptions;
  readonly #totals: Totals;
  readonly #columns: WallColumns;
  #block: readonly RowRead[] = [];
  #next = 0;
  #last = 1;
  #traces = 0;
  #since = Date.now();

  constructor(assembly: ReadAssembly, options: RowOptions, totals: Totals) {
    this.#assembly = assembly;
    this.#options = options;
    this.#totals = totals;
    this.#columns = new WallColumns(options.wall, mostRows);
  }

  /** Whether all rows of the block have been given. */
  get isDone(): boolean {
    return this.#next >= this.#block.length;
  }

  /** Whether others are to have their turn. */
  get isDue(): boolean {
    return Date.now() - this.#since >= turn;
  }

  /** Goes on after others have had it. */
  goOn(): void {
    this.#since = Date.now();
  }

  /** Reads the rows of a block, and works out together those that can be. */
  read(block: readonly unknown[]): void {
    const forms = new Set<Form>();
    let last = this.#last;
    this.#next = 0;
    this.#block = block.map((given) => {
      const row = readRow(given, last + 1);
      last = row.row;
      this.#columns.read(row, forms);
      return row;
    });
    for (const form of forms) form.run();
  }

  /** The rows of the block, until others are to have their turn. */
  *rows(): Generator<TakenRow, void, undefined> {
    const { progress, signal } = this.#options;
    while (this.#next < this.#block.length) {
      signal?.throwIfAborted();
      const row = this.#block[this.#next] as RowRead;
      this.#next += 1;
      this.#last = row.row;
      const taken = this.#take(row);
      progress?.(this.#totals.counts);
      yield taken;
      if (this.isDue) return;
    }
  }

  /** Ends the rows where no more can be read. */
  end(problems: readonly Problem[]): TakenRow {
    return this.#refused(this.#last + 1, problems);
  }

  #take({ row, cells, problems, form, at, kept }: RowRead): TakenRow {
    if (problems !== undefined) return this.#refused(row, problems);
    const wall = form?.wallOf(at);
    if (form === undefined || wall === undefined || !this.#totals.knows(wall)) return this.#takeAlone(row, cells, form);
    const place = form.placeOf(at);
    this.#totals.addTraced(wall, place);
    return new WorkedRow(row, this.#nameOf(cells), wall.linesAt(place), kept, this.#solve);
  }

  #nameOf(cells: Cells): string {
    const { name } = this.#options.wall as { readonly name: string | FromColumn };
    return typeof name === "string" ? name : (cellOf(cells, name.column) as string);
  }

  /** The working of a row from what stood in its columns. */
  readonly #solve = (kept: unknown): Solution<TakeOff> => {
    const cells = Object.fromEntries(this.#columns.names.map((name, index) => [name, (kept as readonly unknown[])[index]]));
    return takeOffOfRead("many walls").solve({ ...this.#assembly, elevations: [readAgain(fillWall(this.#options.wall, cells).wall)] });
  };

  /** Takes off a row by itself, and learns from it how others like it are worked out. */
  #takeAlone(row: number, cells: Cells, form: Form | undefined): TakenRow {
    const { wall: pattern } = this.#options;
    const { wall, places, troubles } = fillWall(pattern, cells);
    const lacking = new Set<unknown>(troubles.map(({ path: [column] }) => column));
    const own = troubles.map(({ path, ...rest }) => problem({ ...rest, path: ["rows", row, ...path] }));
    const read = readElevation(wall);
    const inRow = (problems: readonly Problem[]): readonly Problem[] => problems.map((one) => problemOfRow(row, one, places));
    if ("issues" in read || own.length > 0) {
      // What the cell itself says is wrong goes before what its text reads as.
      const others = inRow("issues" in read ? read.issues : []).filter(({ path: [, , column] }) => !lacking.has(column));
      return this.#refused(row, [...own, ...others]);
    }
    const job: ReadJob = { ...this.#assembly, elevations: [read.value] };
    const tried = takeOffOfRead("many walls").try(job);
    if (!tried.ok) return this.#refused(row, inRow(tried.problems));
    const { solution } = tried;
    this.#totals.add(solution.answers);
    this.#columns.learn(places, read.value);
    const sample = { cells, read: new Map(places.map(({ column, path }) => [column, valueAt(path, read.value)])), answers: solution.answers };
    if (this.#traces < mostTraces && form?.learn(() => traceWall(pattern, this.#assembly, sample, form.columns, mostRows)) === true) this.#traces += 1;
    return new WorkedRow(row, read.value.name, rowLinesOf(solution.answers.lines), undefined, () => solution);
  }

  #refused(row: number, problems: readonly Problem[]): TakenRow {
    this.#totals.refuse();
    return Object.freeze({ ok: false, row, problems: Object.freeze([...problems]) });
  }
}
