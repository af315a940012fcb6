import type { TracedColumn } from "../../many/traced-rows.js";
import type { TracedWall } from "./traced-wall.js";

/** A row of a block that a trace has worked out: which, and its place there. */
export interface Worked {
  readonly wall: TracedWall;
  readonly place: number;
}

/** Rows of one form may come out so many ways, as their numbers compare. */
const mostWays = 8;
/** What could not be traced so many times is not tried again. */
const mostFailures = 3;

/** Rows that are alike but for the numbers in their columns, block by block. */
export class Form {
  readonly columns: readonly TracedColumn[];
  readonly #numbers: readonly Float64Array[];
  readonly #walls: TracedWall[] = [];
  #failures = 0;
  #count = 0;
  #worked: (Worked | undefined)[] = [];
  #tried = 0;

  constructor(columns: readonly TracedColumn[], rows: number) {
    this.columns = columns;
    this.#numbers = columns.map(() => new Float64Array(rows));
  }

  /** Adds the numbers of a row to the block, and gives its place. */
  add(numbers: readonly number[]): number {
    const at = this.#count;
    for (let index = 0; index < this.#numbers.length; index += 1) (this.#numbers[index] as Float64Array)[at] = numbers[index] as number;
    this.#count += 1;
    return at;
  }

  /** Begins a block. */
  clear(): void {
    this.#count = 0;
  }

  /** Works out the rows of the block, as far as traces hold for them. */
  run(): void {
    const places = Array.from({ length: this.#count }, (_, place) => place);
    this.#worked = [];
    this.#tried = this.#walls.length;
    let left: readonly number[] = places;
    for (const wall of this.#walls) {
      if (left.length === 0) return;
      const here = left;
      wall.rows.run(left === places ? this.#numbers : this.#numbers.map((numbers) => Float64Array.from(here, (place) => numbers[place] as number)), here.length);
      const rest: number[] = [];
      for (let place = 0; place < here.length; place += 1) {
        const at = here[place] as number;
        if (wall.rows.holds(place)) this.#worked[at] = { wall, place };
        else rest.push(at);
      }
      left = rest;
    }
  }

  /** A row of the block as a trace has worked it out; traces that came since the block was begun are tried on it alone. */
  workedAt(at: number): Worked | undefined {
    const worked = this.#worked[at];
    if (worked !== undefined) return worked;
    for (const wall of this.#walls.slice(this.#tried)) {
      wall.rows.run(this.#numbers.map((numbers) => numbers.subarray(at, at + 1)), 1);
      if (wall.rows.holds(0)) return { wall, place: 0 };
    }
    return undefined;
  }

  /** Learns one more way to work out rows of this form. */
  learn(trace: () => TracedWall | undefined): void {
    if (this.#walls.length >= mostWays || this.#failures >= mostFailures) return;
    const wall = trace();
    if (wall === undefined) this.#failures += 1;
    else this.#walls.push(wall);
  }
}
