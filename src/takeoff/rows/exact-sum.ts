import type { Fraction } from "fraction.js";
import { type Amount, exact, exactArithmetic, isExact } from "../../core/amount.js";

/** Doubles hold every whole number up to twice this. */
const most = 2 ** 52;

/** A sum that is exact for as long as what is added is. */
export class ExactSum {
  #amount: Amount = exact(0n);
  readonly #pending: Pending[] = [];

  /** What has been added. */
  get amount(): Amount {
    return this.#amount;
  }

  /** Whether it does not matter in which order exact amounts are added. */
  get isExact(): boolean {
    return isExact(this.#amount);
  }

  add(amount: Amount): void {
    if (!isExact(amount) && this.isExact) for (const one of this.#pending) one.flush();
    this.#amount = exactArithmetic.add(this.#amount, amount);
  }

  /** A way for whole numbers into this sum. */
  pending(): Pending {
    const made = new Pending(this);
    this.#pending.push(made);
    return made;
  }
}

/** Whole numbers of one scale on their way into a sum: they are added up in plain numbers first. */
class Pending {
  readonly #sum: ExactSum;
  #scale: Fraction | undefined;
  #number = 0;

  constructor(sum: ExactSum) {
    this.#sum = sum;
  }

  add(whole: number, scale: Fraction): void {
    if (scale !== this.#scale) this.flush();
    this.#scale = scale;
    this.#number += whole;
    if (Math.abs(this.#number) > most || !this.#sum.isExact) this.flush();
  }

  /** Adds to the sum what has come. */
  flush(): void {
    const number = this.#number;
    this.#number = 0;
    if (number !== 0 && this.#scale !== undefined) this.#sum.add(this.#scale.mul(exact(BigInt(number))));
  }
}
