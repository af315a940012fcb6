import { compare, isNought, subtract, sum } from "../../core/quantity-arithmetic.js";
import { isQuantity, type Quantity } from "../../core/quantity.js";
import type { Solution } from "../../core/solution.js";
import { type Costs, costsOf, type OrderList, priceOf } from "../order-list.js";
import { address, type Cell, type Row } from "../workbook/page.js";
import type { Book } from "./book.js";

/** The column of the prices on the sheet of the order list. */
export const priceColumn = 11;
const format = "#,##0.00##";

/** The id of the calculation that takes a share of prices: for what is not foreseen, and for tax. */
const shareId = "takeoff.share-of-price";

/** The shares of a list in the order in which they were worked out: the allowance first, where there is one. */
export function sharesOf({ parts, answers: { cost } }: OrderList): { readonly allowance?: Solution; readonly tax?: Solution } {
  const [first, second] = parts.filter(({ id }) => id === shareId);
  if (cost?.allowance === undefined) return first === undefined ? {} : { tax: first };
  return { ...(first === undefined ? {} : { allowance: first }), ...(second === undefined ? {} : { tax: second }) };
}

/** Says of the sums that shares are taken of where they stand on the sheet of the order list, so that they are no givens. */
export function placeSums(list: OrderList, book: Book): void {
  const { allowance, tax } = sharesOf(list);
  for (const [share, name] of [[allowance, "order_subtotal"], [tax, "order_taxed"]] as const) {
    const of = share?.given.find((line) => line.name === "lines")?.value;
    if (isQuantity(of)) book.put(of, { base: book.name(name) });
  }
}

/** A price in its row; nothing where the item has none. */
export function priceCells(item: string, costs: Costs, book: Book): readonly Cell[] {
  const cost = costs.lines.find((one) => one.item === item);
  if (cost === undefined) return [{ use: "text" }, { use: "faint", value: "no price" }];
  const each = cost.solution.given.find(({ name }) => name === "packPrice")?.value;
  return [isQuantity(each) ? money(each, "number", book) : { use: "text", value: cost.each }, money(priceOf(cost), "answer", book)];
}

function money(quantity: Quantity, use: "number" | "answer", book: Book): Cell {
  const formula = book.shownOf(quantity);
  return { use, value: quantity.toNumber(), format, ...(formula === undefined ? {} : { formula }) };
}

/** The sum of the prices, what is added to it, and the total, below rows that begin and end there. */
export function moneyRows(list: OrderList, rowOf: ReadonlyMap<string, number>, first: number, last: number, book: Book): readonly Row[] {
  const costs = costsOf(list);
  if (costs === undefined) return [];
  const { allowance, tax } = sharesOf(list);
  const column = (row: number): string => address(priceColumn, row);
  const prices = costs.lines.map(priceOf);
  const rows: Row[] = [];
  const add = (says: string, cell: Omit<Cell, "use">, use: Cell["use"] = "answer"): number => {
    const blanks = Array.from({ length: priceColumn - 2 }, (): Cell => ({ use: "text" }));
    rows.push([{ use: use === "answer" ? "strong" : "text", value: says }, ...blanks, { use, format, ...cell }]);
    return last + rows.length;
  };
  const amountOf = (share: Solution): Quantity<"ratio"> => (share.answers as { readonly amount: Quantity<"ratio"> }).amount;
  const subtotal = prices.length === 0 ? undefined : sum(prices);
  const named = (share: Solution | undefined, name: string): { readonly name?: string } => (share === undefined ? {} : { name });
  const added = [add(`sum of prices, ${costs.currency}`, { value: subtotal?.toNumber() ?? 0, formula: `SUM(${column(first)}:${column(last)})`, ...named(allowance, "order_subtotal") })];
  if (allowance !== undefined) added.push(add("allowance for what is not foreseen", share(allowance), "number"));
  if (tax !== undefined) {
    const of = tax.given.find(({ name }) => name === "lines")?.value as Quantity<"ratio">;
    const taxed = costs.lines.filter((line) => line.taxed);
    // The tax is on the allowance too where the sum that it is taken of is more than the prices that are taxed.
    const more = taxed.length === 0 ? of : subtract(of, sum(taxed.map(priceOf)));
    const allowed = allowance !== undefined && !isNought(more) && compare(more, amountOf(allowance)) === 0;
    const cells = [...taxed.map(({ item }) => column(rowOf.get(item) ?? 0)), ...(allowed ? [column(added[1] ?? 0)] : [])];
    add("of this taxed", { value: of.toNumber(), formula: cells.length === 0 ? "0" : cells.join(" + "), name: "order_taxed" }, "number");
    added.push(add("tax", share(tax), "number"));
  }
  const total = [subtotal, allowance && amountOf(allowance), tax && amountOf(tax)].filter((one) => one !== undefined);
  add(`total, ${costs.currency}`, { value: total.length === 0 ? 0 : sum(total).toNumber(), formula: added.map(column).join(" + ") });
  if (costs.unpriced.length > 0) rows.push([{ use: "note", value: "What has no price is not in the total." }]);
  return rows;

  function share(of: Solution): Omit<Cell, "use"> {
    const formula = book.shownOf(amountOf(of));
    return { value: amountOf(of).toNumber(), ...(formula === undefined ? {} : { formula }) };
  }
}
