import type { Solution } from "../../core/solution.js";
import type { TakeOff } from "../take-job.js";
import type { RowLine } from "./row-line.js";

/** A row that was taken off. */
export interface TakenWall {
  readonly ok: true;
  readonly row: number;
  readonly name: string;
  /** The order list in plain numbers. */
  readonly lines: readonly RowLine[];
  /** The take-off of the wall with its working; it is made when it is first asked for. */
  readonly solution: Solution<TakeOff>;
}

/** A row that was taken off, and how its working is come by. An object with a getter of its own would cost more than the row. */
export class WorkedRow implements TakenWall {
  readonly ok = true;
  readonly row: number;
  readonly name: string;
  readonly lines: readonly RowLine[];
  #solution: Solution<TakeOff> | undefined;
  #given: unknown;
  readonly #solve: (given: unknown) => Solution<TakeOff>;

  constructor(row: number, name: string, lines: readonly RowLine[], given: unknown, solve: (given: unknown) => Solution<TakeOff>) {
    this.row = row;
    this.name = name;
    this.lines = lines;
    this.#given = given;
    this.#solve = solve;
    Object.freeze(this);
  }

  get solution(): Solution<TakeOff> {
    if (this.#solution === undefined) {
      this.#solution = this.#solve(this.#given);
      this.#given = undefined;
    }
    return this.#solution;
  }

  toJSON(): TakenWall {
    const { ok, row, name, lines, solution } = this;
    return { ok, row, name, lines, solution };
  }
}
