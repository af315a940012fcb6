import type { Quantity } from "../core/quantity.js";
import { compare, subtract } from "../core/quantity-arithmetic.js";
import { quantity } from "../core/read-quantity.js";
import { boughtOf } from "./lists/known-item.js";
import type { OrderLine } from "./order-line.js";

/** One line of an order list that is not as it was. */
export interface LineChange {
  readonly item: string;
  readonly change: "added" | "removed" | "changed";
  readonly netBefore?: Quantity;
  readonly netAfter?: Quantity;
  readonly packsBefore?: Quantity<"count">;
  readonly packsAfter?: Quantity<"count">;
  /** What is to be bought besides; below nought what is left over. */
  readonly packsMore?: Quantity<"count">;
}

/** The lines that differ between two lists, in the order of the later one and then of those that are gone. */
export function differingLines(before: readonly OrderLine[], after: readonly OrderLine[]): readonly LineChange[] {
  const was = new Map(before.map((line) => [line.item, line]));
  const is = new Map(after.map((line) => [line.item, line]));
  return [
    ...after.flatMap((line) => {
      const earlier = was.get(line.item);
      return earlier !== undefined && alike(earlier, line) ? [] : [lineChange(earlier, line)];
    }),
    ...before.filter(({ item }) => !is.has(item)).map((line) => lineChange(line, undefined)),
  ];
}

function alike(a: OrderLine, b: OrderLine): boolean {
  const [packsA, packsB] = [boughtOf(a), boughtOf(b)];
  const packs = packsA === undefined || packsB === undefined ? packsA === packsB : compare(packsA, packsB) === 0;
  return packs && same(a.net, b.net) && same(a.toOrder, b.toOrder);
}

/** Whether two quantities are the same amount of the same thing, in whatever unit. */
export function same(a: Quantity, b: Quantity): boolean {
  return a.dimension === b.dimension && compare(a, b) === 0;
}

function lineChange(before: OrderLine | undefined, after: OrderLine | undefined): LineChange {
  const [packsBefore, packsAfter] = [before && boughtOf(before), after && boughtOf(after)];
  const none = quantity("count", 0);
  return {
    item: (after ?? before)?.item ?? "",
    change: before === undefined ? "added" : after === undefined ? "removed" : "changed",
    ...(before === undefined ? {} : { netBefore: before.net }),
    ...(after === undefined ? {} : { netAfter: after.net }),
    ...(packsBefore === undefined ? {} : { packsBefore }),
    ...(packsAfter === undefined ? {} : { packsAfter }),
    ...(packsBefore === undefined && packsAfter === undefined ? {} : { packsMore: subtract(packsAfter ?? none, packsBefore ?? none) }),
  };
}
