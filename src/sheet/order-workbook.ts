import { isQuantity, type Quantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";
import type { OrderList, SheetLine } from "./order-list.js";
import { blocksOf, givenCells, leavesOf } from "./pages/blocks.js";
import { Book } from "./pages/book.js";
import { sourcesPage, unitsPage } from "./pages/closing-pages.js";
import { givensPage } from "./pages/givens-page.js";
import { limitBook } from "./pages/limits.js";
import { placeSums, sharesOf } from "./pages/money-rows.js";
import { orderPage } from "./pages/order-page.js";
import { workedPage } from "./pages/worked-page.js";
import type { WorkbookOptions } from "./workbook.js";
import { writeWorkbook } from "./workbook/write-workbook.js";

/**
 * Writes an order list as a workbook (.xlsx) with live formulas: the list, the givens, how each figure is worked out,
 * unit factors, and cautions, assumptions and sources. Change a given, and net, what is ordered and packs follow.
 *
 * Its givens are the figures that the formulas of the lines begin with, such as the area of all walls: how that was
 * measured, and which boards go where, is not in the cells.
 *
 * @param list - what `takeOff.solve` gives
 * @param options - a title, and whose limits the cells keep
 * @returns the bytes of the file; the same input gives the same bytes
 * @example
 * ```ts
 * const list = takeOff.solve({
 *   measuredTo: "backing",
 *   elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
 *   layers: [{ kind: "barrier", name: "barrier", wetFilm: "25 mil", coats: 2 }],
 *   packs: { barrier: { volume: "5 gal" } },
 *   allowances: { barrier: { lossShare: "20 %" } },
 * });
 * orderWorkbook(list, { title: "North wall" }).length > 1000; // true
 * ```
 */
export function orderWorkbook(list: OrderList, options: WorkbookOptions = {}): Uint8Array {
  const title = options.title ?? list.title;
  const book = new Book(limitBook(options.limitsOf ?? []));
  const [orderTitle, workedTitle] = [book.title("Order"), book.title("Worked")];
  const blocks = blocksOf(needed(list), book);
  placeSums(list, book);
  const givens = givensPage("Givens", givenCells(blocks, book), book);
  const worked = workedPage(workedTitle, "How each figure is worked out", blocks, book);
  return writeWorkbook([orderPage(orderTitle, title, list, book), givens, worked, unitsPage(book), sourcesPage([list], book)]);
}

/** The calculations that the lines rest on, in the order in which they were worked out, each with the items it serves. */
function needed(list: OrderList): readonly { readonly heading: string; readonly solution: Solution }[] {
  const all = [...new Set(list.parts.flatMap(leavesOf))];
  const source = new Map(all.flatMap((leaf) => leaf.steps.map(({ value }): [Quantity, Solution] => [value, leaf])));
  const items = new Map<Solution, Set<string>>();
  const serve = (leaf: Solution | undefined, item: string): void => {
    if (leaf === undefined || items.get(leaf)?.has(item) === true) return;
    items.set(leaf, (items.get(leaf) ?? new Set()).add(item));
    for (const { value } of leaf.given) if (isQuantity(value)) serve(source.get(value), item);
  };
  for (const line of list.answers.lines) for (const leaf of [...leavesOf(line.solution), ...figuresOf(line).map((one) => source.get(one))]) serve(leaf, line.item);
  for (const { item, solution } of list.answers.prices ?? []) serve(solution, item);
  for (const [what, solution] of Object.entries(sharesOf(list))) serve(solution, what);
  return all.flatMap((solution) => {
    const serves = [...(items.get(solution) ?? [])];
    if (serves.length === 0) return [];
    const most = 3;
    const named = serves.length > most ? `${serves.slice(0, most - 1).join(", ")} and ${String(serves.length - most + 1)} more` : serves.join(", ");
    return [{ heading: `${solution.title}: ${named}`, solution }];
  });
}

function figuresOf({ net, toOrder, packs }: SheetLine): readonly Quantity[] {
  return packs === undefined ? [net, toOrder] : [net, toOrder, packs];
}
