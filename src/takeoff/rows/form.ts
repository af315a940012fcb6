import type { TracedColumn } from "../../many/traced-rows.js";
import type { TracedWall } from "./traced-wall.js";

/** Rows of one form may come out so many ways, as their numbers compare. */
const mostWays = 8;
/** What could not be traced so many times is not tried again. */
const mostFailures = 3;

/** Rows that are alike but for the numbers in their columns, block by block. */
export class Form {
  readonly columns: readonly TracedColumn[];
  readonly #numbers: readonly Float64Array[];
  readonly #walls: TracedWall[] = [];
  /** By row of the block, the trace that has worked it out, and its place there. */
  readonly #worked: (TracedWall | undefined)[] = [];
  readonly #places: number[] = [];
  #failures = 0;
  #count = 0;
  /** How many traces the block was tried with. */
  #tried = 0;

  constructor(columns: readonly TracedColumn[], rows: number) {
    this.columns = columns;
    this.#numbers = columns.map(() => new Float64Array(rows));
  }

  /** Adds the numbers of a row to the block, and gives its place. */
  add(numbers: readonly number[]): number {
    const at = this.#count;
    this.#numbers.forEach((column, index) => {
      column[at] = numbers[index] as number;
    });
    this.#worked[at] = undefined;
    this.#count += 1;
    return at;
  }

  /** Begins a block. */
  clear(): void {
    this.#count = 0;
  }

  /** Works out the rows of the block, as far as traces hold for them. */
  run(): void {
    this.#tried = this.#walls.length;
    let [left, numbers, count]: [readonly number[] | undefined, readonly Float64Array[], number] = [undefined, this.#numbers, this.#count];
    for (const wall of this.#walls) {
      if (count === 0) return;
      wall.run(numbers, count);
      const rest: number[] = [];
      for (let place = 0; place < count; place += 1) {
        const at = left === undefined ? place : (left[place] as number);
        if (wall.rows.holds(place)) {
          this.#worked[at] = wall;
          this.#places[at] = place;
        } else rest.push(at);
      }
      [left, count] = [rest, rest.length];
      numbers = this.#numbers.map((some) => someOf(some, rest));
    }
  }

  /** The trace that has worked out a row of the block; one that came since the block was begun is tried on it alone. */
  wallOf(at: number): TracedWall | undefined {
    const worked = this.#worked[at];
    if (worked !== undefined) return worked;
    for (const wall of this.#walls.slice(this.#tried)) {
      wall.run(this.#numbers.map((numbers) => numbers.subarray(at, at + 1)), 1);
      this.#places[at] = 0;
      if (wall.rows.holds(0)) return wall;
    }
    return undefined;
  }

  /** The place of a row of the block in the trace that has worked it out. */
  placeOf(at: number): number {
    return this.#places[at] as number;
  }

  /** Learns one more way to work out rows of this form; whether it could. */
  learn(trace: () => TracedWall | undefined): boolean {
    if (this.#walls.length >= mostWays || this.#failures >= mostFailures) return false;
    const wall = trace();
    if (wall === undefined) this.#failures += 1;
    else this.#walls.push(wall);
    return wall !== undefined;
  }
}

function someOf(numbers: Float64Array, places: readonly number[]): Float64Array {
  const some = new Float64Array(places.length);
  places.forEach((place, index) => {
    some[index] = numbers[place] as number;
  });
  return some;
}
