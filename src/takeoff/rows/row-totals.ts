import { readDigits, toDecimal } from "../../core/amount.js";
import type { DimensionName } from "../../core/dimensions.js";
import { amountOf, makeQuantity, type Quantity } from "../../core/quantity.js";
import type { UnitCode } from "../../core/units.js";
import { boughtOf } from "../lists/known-item.js";
import { moneyText, type Money } from "../money.js";
import type { OrderLine } from "../order-line.js";
import type { TakeOff } from "../take-job.js";
import { ExactSum } from "./exact-sum.js";
import { type Summand, Tally } from "./tally.js";
import type { TracedWall } from "./traced-wall.js";

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

/** One item, as far as its rows have come. */
interface ItemSum {
  readonly item: string;
  readonly dimension: DimensionName;
  readonly unit: UnitCode;
  readonly net: ExactSum;
  packs?: ExactSum;
}

/** Adds up rows as they come, and keeps nothing else of them. */
export class Totals {
  #rows = 0;
  #refused = 0;
  #cost: ExactSum | undefined;
  readonly #smallest: Money | undefined;
  readonly #items = new Map<string, ItemSum>();
  readonly #tallies = new Map<TracedWall, Tally>();

  constructor(smallest: Money | undefined) {
    this.#smallest = smallest;
  }

  /** Adds a row that was taken off by itself. */
  add({ lines, cost }: TakeOff): void {
    this.#rows += 1;
    for (const line of lines) {
      const sums = this.#sumOf(line);
      const bought = boughtOf(line);
      sums.net.add(amountOf(line.net));
      if (bought !== undefined) (sums.packs ??= new ExactSum()).add(amountOf(bought));
    }
    if (cost !== undefined) (this.#cost ??= new ExactSum()).add(readDigits(cost.amounts.total.toFixed()));
  }

  /** Whether all items of a traced wall have come before: the unit of a total is that of the first row that has it. */
  knows(wall: TracedWall): boolean {
    return this.#tallies.has(wall) || wall.items.every(({ item }) => this.#items.has(item));
  }

  /** Adds a row that was worked out in a trace. */
  addTraced(wall: TracedWall, place: number): void {
    this.#rows += 1;
    let tally = this.#tallies.get(wall);
    if (tally === undefined) this.#tallies.set(wall, (tally = new Tally(wall, this.#sumsOf(wall))));
    tally.add(place);
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
    for (const tally of this.#tallies.values()) tally.settle();
    const cost = this.#cost === undefined || this.#smallest === undefined ? {} : { cost: moneyText(toDecimal(this.#cost.amount), this.#smallest) };
    return { ...this.counts, items: [...this.#items.values()].map(itemTotal), ...cost };
  }

  #sumOf(line: OrderLine): ItemSum {
    const known = this.#items.get(line.item);
    if (known !== undefined) return known;
    const { item, net: { dimension, unit } } = line;
    const sum: ItemSum = { item, dimension, unit, net: new ExactSum() };
    this.#items.set(item, sum);
    return sum;
  }

  #sumsOf({ items, cost }: TracedWall): readonly Summand[] {
    const ofItems = items.flatMap(({ item, net, bought }): Summand[] => {
      const sums = this.#items.get(item);
      if (sums === undefined) throw new Error(`${item} has not come before`);
      return [{ sum: sums.net, figure: net }, ...(bought === undefined ? [] : [{ sum: (sums.packs ??= new ExactSum()), figure: bought }])];
    });
    return cost === undefined ? ofItems : [...ofItems, { sum: (this.#cost ??= new ExactSum()), figure: cost }];
  }
}

function itemTotal({ item, dimension, unit, net, packs }: ItemSum): ItemTotal {
  const told: ItemTotal = { item, net: makeQuantity<DimensionName>(dimension, net.amount, unit) };
  return packs === undefined ? told : { ...told, packs: makeQuantity("count", packs.amount, "count") };
}
