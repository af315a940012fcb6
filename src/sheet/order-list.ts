import type { Quantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";

/** One line of an order list, as a take-off gives it. */
export interface SheetLine {
  readonly item: string;
  readonly layer: string;
  readonly net: Quantity;
  readonly allowance?: Quantity;
  readonly allowanceIs?: "waste" | "lossShare";
  readonly toOrder: Quantity;
  readonly pack?: Quantity;
  readonly packs?: Quantity;
  readonly solution: Solution;
}

/** What one line costs; its solution works the price out. */
export interface SheetPrice {
  readonly item: string;
  /** Price of one pack or piece, with its currency. */
  readonly each: string;
  readonly price: string;
  readonly taxed: boolean;
  readonly solution: Solution;
}

/** What a list costs together. */
export interface SheetCost {
  readonly currency: string;
  readonly allowance?: string;
  readonly tax?: string;
  readonly total: string;
  readonly unpriced: readonly string[];
}

/** An order list worked out: what `takeOff.solve` gives. */
export type OrderList = Solution<{ readonly lines: readonly SheetLine[]; readonly prices?: readonly SheetPrice[]; readonly cost?: SheetCost }>;

/** The prices of a list with what they come to. */
export interface Costs extends SheetCost {
  readonly lines: readonly SheetPrice[];
}

/** What a list costs; nothing where it has no prices. */
export function costsOf({ answers: { prices = [], cost } }: OrderList): Costs | undefined {
  return cost === undefined ? undefined : { ...cost, lines: prices };
}

/** The price of a line as a number, which its solution works out. */
export function priceOf({ solution }: SheetPrice): Quantity<"ratio"> {
  return (solution.answers as { readonly price: Quantity<"ratio"> }).price;
}
