import { isNought } from "../../core/quantity-arithmetic.js";
import { unitSymbol } from "../../core/units.js";
import { fullAddress, headRow, type Page, type Row } from "../workbook/page.js";
import type { GivenCell } from "./blocks.js";
import type { Book } from "./book.js";
import { numberIn } from "./figures.js";
import { inputCondition } from "./limits.js";

const title = "Givens";
const heads = 4;
const valueColumn = 2;

/** The sheet of givens: one cell for each, marked as an input, with its unit beside it. */
export function givensPage(heading: string, cells: readonly GivenCell[], book: Book): Page {
  const rows = cells.map((cell, index) => givenRow(cell, heads + index + 1, book));
  return {
    title,
    widths: [52, 14, 9, 22, 58, 9],
    heads,
    fixedColumns: 1,
    landscape: true,
    rows: [
      [{ use: "title", value: heading }],
      [{ use: "note", value: "Change a marked cell, and every answer follows. A cell that is empty, no number or beyond its limits gives #N/A, and no answer." }],
      [{ use: "note", value: `The numbers in brackets are those of the sheet of sources.${apart(cells)}` }],
      headRow(["what is given", "value", "unit", "must be", "used in", "source"], ["value"]),
      ...rows,
    ],
  };
}

/** Which areas stand in several cells: who changes one of them wants to change all, or the layers no longer agree. */
function apart(cells: readonly GivenCell[]): string {
  const areas = cells.filter(({ value }) => value.dimension === "area" && !isNought(value)).map(({ says }) => says);
  const several = [...new Set(areas.filter((says, index) => areas.indexOf(says) !== index))];
  return several.length === 0 ? "" : ` Measured apart for several layers, so change each: ${several.join("; ")}.`;
}

function givenRow({ value, name, says, assumed, blocks }: GivenCell, row: number, book: Book): Row {
  const unit = book.use(value.unit);
  const limits = blocks.flatMap(({ solution }) => book.limits(solution.id, nameIn(solution.given, value)));
  const words = [...new Set(limits.map((limit) => limit.says))];
  const must = words.length === 0 ? "a number" : words.join(", ");
  const [first] = blocks;
  book.put(value, { shown: fullAddress(title, valueColumn, row) });
  const basis = first?.solution.given.find((line) => line.value === value)?.basis;
  return [
    { use: "text", value: assumed ? `${says} (assumed)` : says },
    {
      use: "input",
      value: numberIn(value, unit),
      name: book.name(`given ${first?.prefix ?? ""}${name} ${unitSymbol(unit)}`),
      must: { formula: inputCondition(`B${String(row)}`, limits, unit), says: `${says}: ${must}` },
    },
    { use: "text", value: unitSymbol(unit) },
    { use: "faint", value: must },
    { use: "faint", value: firstOf([...new Set(blocks.map(({ heading }) => heading))]) },
    { use: "faint", value: assumed ? book.source(basis) : "" },
  ];
}

/** The name that a quantity has among the givens of a solution. */
function nameIn(given: GivenCell["blocks"][number]["solution"]["given"], value: GivenCell["value"]): string {
  return given.find((line) => line.value === value)?.name ?? "";
}

/** A few of many, and how many more. */
function firstOf(texts: readonly string[], most = 2): string {
  return texts.length <= most ? texts.join("; ") : `${texts.slice(0, most).join("; ")}; and ${String(texts.length - most)} more`;
}
