import { Decimal } from "../core/amount.js";
import type { Quantity } from "../core/quantity.js";
import { sum } from "../core/quantity-arithmetic.js";
import { boughtOf } from "./lists/known-item.js";
import { moneyText, type Money } from "./money.js";
import type { TakeOff } from "./take-job.js";

/** One item over all rows. Packs were rounded up wall by wall before they were added. */
export interface ItemTotal {
  readonly item: string;
  readonly net: Quantity;
  readonly packs?: Quantity<"count">;
}

/** All rows together, so far. */
export interface RowTotals {
  readonly rows: number;
  readonly refused: number;
  readonly items: readonly ItemTotal[];
  /** What the rows cost together, where there are prices. */
  readonly cost?: string;
}

/** Adds up rows as they come, and keeps nothing else of them. */
export class Totals {
  #rows = 0;
  #refused = 0;
  #cost: Decimal | undefined;
  readonly #smallest: Money | undefined;
  readonly #items = new Map<string, ItemTotal>();

  constructor(smallest: Money | undefined) {
    this.#smallest = smallest;
  }

  /** Adds a row that was taken off. */
  add({ lines, cost }: TakeOff): void {
    this.#rows += 1;
    for (const line of lines) {
      const { item, net } = line;
      const [sofar, packs] = [this.#items.get(item), boughtOf(line)];
      const more = packs === undefined ? {} : { packs: sofar?.packs === undefined ? packs : sum([sofar.packs, packs]) };
      this.#items.set(item, { item, net: sofar === undefined ? net : sum([sofar.net, net] as readonly Quantity<"count">[]), ...more });
    }
    if (cost !== undefined) this.#cost = (this.#cost ?? new Decimal(0)).plus(cost.amounts.total);
  }

  /** Counts a row that could not be taken off. */
  refuse(): void {
    this.#rows += 1;
    this.#refused += 1;
  }

  /** How many rows have come, and how many of them could not be taken off. */
  get counts(): Pick<RowTotals, "rows" | "refused"> {
    return { rows: this.#rows, refused: this.#refused };
  }

  /** What there is so far. */
  get sofar(): RowTotals {
    const cost = this.#cost === undefined || this.#smallest === undefined ? {} : { cost: moneyText(this.#cost, this.#smallest) };
    return { ...this.counts, items: [...this.#items.values()], ...cost };
  }
}
