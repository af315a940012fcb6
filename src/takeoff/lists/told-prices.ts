import type { Decimal } from "../../core/amount.js";
import type { Quantity } from "../../core/quantity.js";
import type { Solution } from "../../core/solution.js";
import { type Money, moneyText } from "../money.js";
import type { Priced } from "./prices.js";

/** What one line costs. */
export interface PriceLine {
  readonly item: string;
  readonly packs: Quantity<"count">;
  /** Price of one pack, or of one piece where there are no packs. */
  readonly each: string;
  readonly markup: Quantity<"ratio">;
  readonly price: string;
  /** The price as a number. */
  readonly amount: Decimal;
  readonly taxed: boolean;
  readonly solution: Solution;
}

/** What the list costs, as far as prices are given. Each line is rounded once, and so are allowance and tax. */
export interface Costs {
  readonly currency: string;
  readonly lines: readonly PriceLine[];
  readonly subtotal: string;
  readonly allowance?: string;
  readonly tax?: string;
  readonly total: string;
  /** The same as numbers. */
  readonly amounts: { readonly subtotal: Decimal; readonly allowance?: Decimal; readonly tax?: Decimal; readonly total: Decimal };
  /** Lines without a price, which are not in the total. */
  readonly unpriced: readonly string[];
}

/** Prices as they are told: in texts, and as numbers. */
export function costsOf({ smallest, lines, subtotal, allowance, tax, total, unpriced }: Priced): Costs {
  const amountOf = (price: Quantity<"ratio">): Decimal => price.to("ratio");
  const text = (price: Quantity<"ratio">): string => moneyText(amountOf(price), smallest);
  return {
    currency: smallest.currency,
    lines: lines.map(({ item, packs, each, markup, price, taxed, solution }) => ({ item, packs, each: eachText(each, smallest), markup, price: text(price), amount: amountOf(price), taxed, solution })),
    subtotal: text(subtotal),
    ...(allowance === undefined ? {} : { allowance: text(allowance) }),
    ...(tax === undefined ? {} : { tax: text(tax) }),
    total: text(total),
    amounts: {
      subtotal: amountOf(subtotal),
      ...(allowance === undefined ? {} : { allowance: amountOf(allowance) }),
      ...(tax === undefined ? {} : { tax: amountOf(tax) }),
      total: amountOf(total),
    },
    unpriced,
  };
}

/** A price of one, with all its places. */
function eachText({ amount, currency }: Money, smallest: Money): string {
  return `${amount.toFixed(Math.max(amount.decimalPlaces(), smallest.amount.decimalPlaces()))} ${currency}`;
}
