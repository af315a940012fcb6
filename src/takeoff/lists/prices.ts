import type { Decimal } from "../../core/amount.js";
import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { sum } from "../../core/quantity-arithmetic.js";
import { quantity } from "../../core/read-quantity.js";
import type { Solution } from "../../core/solution.js";
import type { ReadJob } from "../job.js";
import { linePrice } from "../line-price.js";
import { type Money, moneyText } from "../money.js";
import type { OrderLine } from "../order-line.js";
import { say } from "../refusals.js";
import { shareOfPrice } from "../share-of-price.js";
import type { Taking } from "../taking.js";
import { boughtOf, refuseUnknownItem, soldAs } from "./known-item.js";

type Prices = NonNullable<ReadJob["prices"]>;
type Price = Prices["items"][string];

/** What one line costs, before it is told. */
export interface PricedLine {
  readonly item: string;
  readonly packs: Quantity<"count">;
  readonly each: Money;
  readonly markup: Quantity<"ratio">;
  readonly price: Quantity<"ratio">;
  readonly taxed: boolean;
  readonly solution: Solution;
}

/** What the list costs, before it is told. Each line is rounded once, and so are allowance and tax. */
export interface Priced {
  readonly smallest: Money;
  readonly lines: readonly PricedLine[];
  readonly subtotal: Quantity<"ratio">;
  readonly allowance?: Quantity<"ratio">;
  readonly tax?: Quantity<"ratio">;
  readonly total: Quantity<"ratio">;
  /** Lines without a price, which are not in the total. */
  readonly unpriced: readonly string[];
}

/** Prices of the lines that have one, with allowance and tax. */
export function pricedOf(lines: readonly OrderLine[], taking: Taking): Priced | undefined {
  const { job: { prices }, work } = taking;
  if (prices === undefined) return undefined;
  for (const item of Object.keys(prices.items)) refuseUnknownItem(item, ["prices", "items", item], taking);
  refuseCurrencies(prices, taking);
  const taxed = Object.entries(prices.items).flatMap(([item, price]) => (price.taxed === true ? [item] : []));
  if (prices.tax === undefined && (taxed.length > 0 || prices.allowance?.taxed === true)) {
    work.problem({ code: "missing", path: ["prices", "tax"], given: "", wanted: taxed[0] === undefined ? say("allowanceTaxed") : say("itemTaxed", { item: taxed[0] }) });
  }
  const { smallest } = prices;
  if (smallest.amount.isZero()) {
    work.problem({ code: "tooLow", path: ["prices", "smallest"], given: moneyText(smallest.amount, smallest), wanted: say("aboveNoMoney") });
    return undefined;
  }
  // Spare stock is sold as its item is: what is wrong with the one is not told again of the other.
  const wrong = new Set<string>();
  const priced = lines.flatMap((line) => {
    if (wrong.has(soldAs(line))) return [];
    const one = priceLine(line, prices, taking);
    if (one === undefined) wrong.add(soldAs(line));
    return one ?? [];
  });
  const ratio = (amount: Decimal): Quantity<"ratio"> => quantity("ratio", { value: amount.toFixed(), unit: "ratio" });
  const added = (some: readonly PricedLine[]): Quantity<"ratio"> => sum([quantity("ratio", 0), ...some.map(({ price }) => price)]);
  const share = (of: Quantity<"ratio">, at: Quantity<"ratio">, path: Path): Quantity<"ratio"> =>
    work.part(shareOfPrice, { lines: of, share: at, smallest: ratio(smallest.amount) }, path).answers.amount;
  const subtotal = added(priced);
  const allowance = prices.allowance && share(subtotal, prices.allowance.share, ["prices", "allowance"]);
  const taxable = sum([added(priced.filter(({ taxed }) => taxed)), ...(allowance !== undefined && prices.allowance?.taxed === true ? [allowance] : [])]);
  const tax = prices.tax && share(taxable, prices.tax, ["prices", "tax"]);
  const total = sum([subtotal, ...(allowance === undefined ? [] : [allowance]), ...(tax === undefined ? [] : [tax])]);
  work.assume("each price is rounded once, to the smallest amount of the currency, halves up, and the rounded prices are added; so are allowance and tax");
  return {
    smallest,
    lines: priced,
    subtotal,
    ...(allowance === undefined ? {} : { allowance }),
    ...(tax === undefined ? {} : { tax }),
    total,
    unpriced: lines.filter((line) => !Object.hasOwn(prices.items, soldAs(line))).map(({ item }) => item),
  };
}

/** All prices are in one currency: there is no rate of exchange here. */
function refuseCurrencies({ smallest, items }: Prices, { work }: Taking): void {
  for (const [item, price] of Object.entries(items)) {
    for (const key of ["perPack", "each"] as const) {
      const money = price[key];
      if (money === undefined || money.currency === smallest.currency) continue;
      work.problem({ code: "refused", path: ["prices", "items", item, key], given: `${money.amount.toFixed()} ${money.currency}`, wanted: say("currenciesDiffer", { currency: smallest.currency }) });
    }
  }
}

function priceLine(line: OrderLine, prices: Prices, { work }: Taking): PricedLine | undefined {
  const name = soldAs(line);
  const given = Object.hasOwn(prices.items, name) ? prices.items[name] : undefined;
  if (given === undefined) return undefined;
  const path = ["prices", "items", name];
  const each = priceOf(line, given, path, work);
  const packs = boughtOf(line);
  const taxed = given.taxed ?? false;
  if (prices.tax !== undefined && given.taxed === undefined && line.spareOf === undefined) work.problem({ code: "missing", path: [...path, "taxed"], given: "", wanted: say("sayWhetherTaxed") });
  if (each === undefined || packs === undefined) return undefined;
  const markup = given.markup ?? prices.markup ?? quantity("ratio", "0 %");
  const ratio = (amount: Decimal): { readonly value: string; readonly unit: "ratio" } => ({ value: amount.toFixed(), unit: "ratio" });
  const solution = work.attempt(linePrice, { packs, packPrice: ratio(each.amount), markup, smallest: ratio(prices.smallest.amount) }, path);
  if (solution === undefined) return undefined;
  return { item: line.item, packs, each, markup, price: solution.answers.price, taxed, solution };
}

/** The price of a pack where the line has packs, that of a piece where it has none. */
function priceOf(line: OrderLine, { perPack, each }: Price, path: Path, work: Taking["work"]): Money | undefined {
  const wants = line.packs === undefined ? (line.toOrder.dimension === "count" ? "each" : undefined) : line.pack === undefined ? "each" : "perPack";
  const other = wants === "each" ? perPack : each;
  if (wants === undefined) work.problem({ code: "refused", path, given: "", wanted: say("noPriceFor", { item: line.item }) });
  else if (other !== undefined) work.problem({ code: "unknown", path: [...path, wants === "each" ? "perPack" : "each"], given: "", wanted: say(wants === "each" ? "boughtByThePiece" : "boughtInPacks") });
  else if ((wants === "each" ? each : perPack) === undefined) work.problem({ code: "missing", path: [...path, wants], given: "", wanted: say("writeAPrice") });
  return wants === "each" ? each : wants === "perPack" ? perPack : undefined;
}
