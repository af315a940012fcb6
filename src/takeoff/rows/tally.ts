import { exact } from "../../core/amount.js";
import type { ExactSum } from "./exact-sum.js";
import type { TracedWall } from "./traced-wall.js";

/** A figure of a traced wall, and the sum it goes into. */
export interface Summand {
  readonly sum: ExactSum;
  readonly figure: number;
}

/** Doubles hold every whole number up to twice this. */
const most = 2 ** 52;

/** The rows of a traced wall on their way into the totals: whole numbers of one scale are added up in plain numbers first. */
export class Tally {
  readonly #wall: TracedWall;
  readonly #summands: readonly Summand[];
  /** The rows of the block at hand that have been added. */
  readonly #places: number[] = [];
  /** By summand, how many of them are in its sum. */
  readonly #settled: number[];

  constructor(wall: TracedWall, summands: readonly Summand[]) {
    this.#wall = wall;
    this.#summands = summands;
    this.#settled = summands.map(() => 0);
    summands.forEach(({ sum }, index) => {
      sum.expect(() => {
        this.#settle(index);
      });
    });
    wall.beforeNext(() => {
      this.settle();
      this.#places.length = 0;
      this.#settled.fill(0);
    });
  }

  /** Adds a row of the block. */
  add(place: number): void {
    this.#places.push(place);
    for (let index = 0; index < this.#summands.length; index += 1) {
      const { sum, figure } = this.#summands[index] as Summand;
      // Where it is not exact the order matters.
      if (!sum.isExact || !this.#wall.rows.isExact(figure)) this.#settle(index);
    }
  }

  /** Adds to the sums what is still out. */
  settle(): void {
    for (const index of this.#summands.keys()) this.#settle(index);
  }

  #settle(index: number): void {
    const { sum, figure } = this.#summands[index] as Summand;
    const { rows } = this.#wall;
    const from = this.#settled[index] as number;
    this.#settled[index] = this.#places.length;
    const whole = rows.wholeOf(figure);
    if (whole === undefined) {
      for (let at = from; at < this.#places.length; at += 1) sum.add(rows.exactly(figure, this.#places[at] as number));
      return;
    }
    let number = 0;
    const add = (): void => {
      if (number !== 0) sum.add(whole.scale.mul(exact(BigInt(number))));
      number = 0;
    };
    for (let at = from; at < this.#places.length; at += 1) {
      number += whole.values[this.#places[at] as number] as number;
      if (Math.abs(number) > most) add();
    }
    add();
  }
}
