import { type Amount, exact, exactArithmetic, isExact } from "../../core/amount.js";

/** A sum that is exact for as long as what is added is; exact amounts may come late, since their order does not matter. */
export class ExactSum {
  #amount: Amount = exact(0n);
  readonly #late: (() => void)[] = [];

  /** What has been added. */
  get amount(): Amount {
    return this.#amount;
  }

  /** Whether all that was added is exact. */
  get isExact(): boolean {
    return isExact(this.#amount);
  }

  add(amount: Amount): void {
    if (!isExact(amount) && this.isExact) for (const settle of this.#late) settle();
    this.#amount = exactArithmetic.add(this.#amount, amount);
  }

  /** Takes note of exact amounts that come late: `settle` is called once it begins to matter, and adds those that are still out. */
  expect(settle: () => void): void {
    this.#late.push(settle);
  }
}
