import type { Fraction } from "../../core/fraction.js";
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

/** One figure on its way into its sum: whole numbers of one scale are added up in plain numbers first. */
class Share {
  readonly sum: ExactSum;
  readonly #figure: number;
  /** How many rows of the block at hand are counted. */
  #counted = 0;
  #number = 0;
  #scale: Fraction | undefined;

  constructor({ sum, figure }: Summand) {
    [this.sum, this.#figure] = [sum, figure];
  }

  /** Counts the rows of the block that have come since. */
  count({ rows }: TracedWall, places: readonly number[]): void {
    const whole = rows.wholeOf(this.#figure);
    const from = this.#counted;
    this.#counted = places.length;
    if (whole === undefined) {
      for (let at = from; at < places.length; at += 1) this.sum.add(rows.exactly(this.#figure, places[at] as number));
    } else {
      if (whole.scale !== this.#scale) this.settle();
      this.#scale = whole.scale;
      const { values } = whole;
      for (let at = from; at < places.length; at += 1) {
        this.#number += values[places[at] as number] as number;
        if (Math.abs(this.#number) > most) this.settle();
      }
    }
  }

  /** Begins a block. */
  begin(): void {
    this.#counted = 0;
  }

  /** Adds to the sum what has been counted. */
  settle(): void {
    const number = this.#number;
    this.#number = 0;
    if (number !== 0 && this.#scale !== undefined) this.sum.add(this.#scale.mul(exact(BigInt(number))));
  }
}

/** The rows of a traced wall on their way into the totals. */
export class Tally {
  readonly #wall: TracedWall;
  readonly #shares: readonly Share[];
  /** The rows of the block at hand that have come. */
  readonly #places: number[] = [];
  /** What is not exact is added row by row, for then the order matters. */
  #inOrder: boolean;

  constructor(wall: TracedWall, summands: readonly Summand[]) {
    this.#wall = wall;
    this.#shares = summands.map((one) => new Share(one));
    this.#inOrder = summands.some(({ sum, figure }) => !sum.isExact || !wall.rows.isExact(figure));
    for (const share of this.#shares) {
      share.sum.expect(() => {
        share.count(wall, this.#places);
        share.settle();
        this.#inOrder = true;
      });
    }
    wall.beforeNext(() => {
      for (const share of this.#shares) {
        share.count(wall, this.#places);
        share.begin();
      }
      this.#places.length = 0;
    });
  }

  /** Adds a row of the block. */
  add(place: number): void {
    this.#places.push(place);
    if (this.#inOrder) this.settle();
  }

  /** Adds to the sums all that has come. */
  settle(): void {
    for (const share of this.#shares) {
      share.count(this.#wall, this.#places);
      share.settle();
    }
  }
}
