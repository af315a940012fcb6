import type { Quantity } from "../../core/quantity.js";
import { unitSymbol } from "../../core/units.js";
import { costsOf, type OrderList, type SheetLine } from "../order-list.js";
import { type Cell, groupRow, headRow, type Page, type Row } from "../workbook/page.js";
import type { Book } from "./book.js";
import { formatFor, numberIn } from "./figures.js";
import { moneyRows, priceCells, priceColumn } from "./money-rows.js";

const heads = 3;

/** The order list: what ends on the wall, what is added, what to order, in how many packs, at what price; each figure from where it is worked out. */
export function orderPage(title: string, heading: string, list: OrderList, book: Book): Page {
  const { lines } = list.answers;
  const costs = costsOf(list);
  const columns = costs === undefined ? 9 : priceColumn;
  const rows: Row[] = [];
  const rowOf = new Map<string, number>();
  for (const [index, line] of lines.entries()) {
    if (line.layer !== lines[index - 1]?.layer) rows.push(groupRow(line.layer, columns));
    rows.push([...lineRow(line, book), ...(costs === undefined ? [] : priceCells(line.item, costs, book))]);
    rowOf.set(line.item, heads + rows.length);
  }
  const money = costs === undefined ? [] : ["price of one", "price"];
  return {
    title,
    widths: [36, 12, 8, 12, 12, 8, 12, 8, 9, ...(costs === undefined ? [] : [14, 14])],
    heads,
    fixedColumns: 1,
    landscape: true,
    rows: [
      [{ use: "title", value: heading }],
      [{ use: "note", value: "Figures follow the sheet of givens. Packs are rounded up once, on the figure before it was rounded." }],
      headRow(["item", "net", "", "added", "to order", "", "one pack", "", "packs", ...money], ["net", "added", "to order", "one pack", "packs", ...money]),
      ...rows,
      ...moneyRows(list, rowOf, heads + 1, heads + rows.length, book),
    ],
  };
}

function lineRow({ item, net, allowance, allowanceIs, toOrder, pack, packs }: SheetLine, book: Book): Row {
  const added = allowance === undefined ? undefined : figure(allowance, "number", book);
  // A share of what is bought is no waste on top of the net; the sheet says which.
  const percent = allowance?.unit === "%" ? '0.##" %' : '0.###"';
  return [
    { use: "text", value: item },
    figure(net, "number", book),
    unitCell(net),
    added === undefined ? blank : { ...added, format: `${percent}${allowanceIs === "lossShare" ? ' lost"' : '"'}` },
    figure(toOrder, "answer", book),
    unitCell(toOrder),
    pack === undefined ? blank : { ...figure(pack, "number", book), format: "#,##0.###" },
    pack === undefined ? blank : unitCell(pack),
    packs === undefined ? blank : figure(packs, "answer", book),
  ];
}

const blank: Cell = { use: "text" };

function unitCell(quantity: Quantity): Cell {
  return { use: "text", value: unitSymbol(quantity.unit) };
}

function figure(quantity: Quantity, use: "number" | "answer", book: Book): Cell {
  const [value, formula] = [numberIn(quantity, quantity.unit), book.shownOf(quantity)];
  const format = formatFor(value, false, quantity.dimension);
  return { use, value, format, ...(formula === undefined ? {} : { formula }) };
}
