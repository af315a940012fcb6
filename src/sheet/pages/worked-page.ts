import { formulaText } from "../../core/formula.js";
import { amountOf, isQuantity, type Quantity } from "../../core/quantity.js";
import type { Line, Step } from "../../core/solution.js";
import { type UnitCode, unitSymbol } from "../../core/units.js";
import { isWhole, spreadsheetFormula } from "../workbook/spreadsheet-formula.js";
import { address, fullAddress, groupRow, headRow, type Page, type Row } from "../workbook/page.js";
import type { Block } from "./blocks.js";
import type { Book } from "./book.js";
import { asNumber, baseUnit, formatFor, fromBaseFormula, isBase, numberIn, toBaseFormula } from "./figures.js";
import { inputCondition, within } from "./limits.js";

const heads = 3;
const [valueColumn, baseColumn] = [3, 5];

/** A sheet with blocks that are worked out on it, one below the other. */
export function workedPage(title: string, heading: string, blocks: readonly Block[], book: Book, after: () => readonly Row[] = () => []): Page {
  const rows: Row[] = [
    [{ use: "title", value: heading }],
    [{ use: "note", value: "Formulas count in base units (metres, kilograms, seconds, kelvins), under the names of the cells there; the sheet of units has the factors." }],
    headRow(["what", "symbol", "value", "unit", "in base units", "", "how", "source"], ["value", "in base units"]),
  ];
  for (const block of blocks) {
    rows.push(groupRow(block.heading, 8));
    for (const line of block.solution.given) rows.push(givenRow({ line, block, row: rows.length + 1, title, book }));
    for (const line of block.solution.constants) if (isQuantity(line.value)) rows.push(constantRow({ line: { ...line, value: line.value }, block, row: rows.length + 1, title, book }));
    for (const line of block.solution.steps) rows.push(stepRow({ line, block, row: rows.length + 1, title, book }));
    rows.push([]);
  }
  rows.push(...after());
  return { title, widths: [46, 8, 14, 9, 17, 9, 54, 9], heads, landscape: true, rows };
}

interface At<L> {
  readonly line: L;
  readonly block: Block;
  readonly row: number;
  readonly title: string;
  readonly book: Book;
}

/** What one row says, besides its words. */
interface Figures {
  readonly value: Quantity;
  readonly unit: UnitCode;
  /** The formula of the value as it is shown, and in base units. */
  readonly shown?: string;
  readonly base: string;
  readonly how: string;
  readonly format?: string;
  readonly use?: "number" | "answer";
  readonly shownName?: string;
}

function givenRow(at: At<Line>): Row {
  const { line, block, row, book } = at;
  const { value, name, says } = line;
  if (!isQuantity(value)) return [{ use: "text", value: says }, undefined, { use: "text", value: String(value) }];
  const unit = book.use(value.unit);
  const limits = book.limits(block.solution.id, name);
  const worked = book.baseOf(value);
  // What a block works out is taken from there; all else from the sheet of givens.
  if (worked !== undefined) return rowOf(at, { value, unit, shown: fromBaseFormula(address(baseColumn, row), unit), base: within(worked, limits), how: `= ${worked}` });
  const cell = address(valueColumn, row);
  const base = `IF(${inputCondition(cell, limits, unit)}, ${toBaseFormula(cell, unit)}, NA())`;
  return rowOf(at, { value, unit, shown: book.shownOf(value) ?? "NA()", base, how: line.assumed ? "assumed" : "given" });
}

function constantRow(at: At<Line & { readonly value: Quantity }>): Row {
  const { value } = at.line;
  const unit = at.book.use(value.unit);
  return rowOf(at, { value, unit, base: toBaseFormula(address(valueColumn, at.row), unit), how: "constant" });
}

function stepRow(at: At<Step>): Row {
  const { line, block, book } = at;
  const { value, formula, name, differs } = line;
  const unit = book.use(value.unit);
  const nameOf = (one: string): string => block.names.get(one) ?? one;
  return rowOf(at, {
    value,
    unit,
    shown: fromBaseFormula(nameOf(name), unit),
    base: within(spreadsheetFormula(formula, nameOf), book.limits(block.solution.id, name)),
    how: `${name} = ${formulaText(formula)}${differs === undefined ? "" : ` (${differs})`}`,
    format: formatFor(numberIn(value, unit), isWhole(formula), value.dimension),
    use: "answer",
    ...(isBase(unit) ? {} : { shownName: book.name(`${nameOf(name)} ${unitSymbol(unit)}`) }),
  });
}

function rowOf({ line, block, row, title, book }: At<Line>, { value, unit, shown, base, how, format, use = "number", shownName }: Figures): Row {
  if (use === "answer") book.put(value, { shown: fullAddress(title, valueColumn, row) });
  const name = block.names.get(line.name);
  return [
    { use: "text", value: line.says },
    { use: "faint", value: line.symbol },
    { use, value: numberIn(value, unit), ...(shown === undefined ? {} : { formula: shown }), ...(format === undefined ? {} : { format }), ...(shownName === undefined ? {} : { name: shownName }) },
    { use: "text", value: unitSymbol(unit) },
    { use: "faintNumber", value: asNumber(amountOf(value)), formula: base, ...(name === undefined ? {} : { name }) },
    { use: "faint", value: isBase(unit) ? "" : baseUnit(unit) },
    { use: "faint", value: how },
    { use: "faint", value: book.source(line.assumed || how !== "given" ? line.basis : undefined) },
  ];
}
