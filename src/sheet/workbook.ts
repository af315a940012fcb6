import type { AnyCallable } from "../core/callable.js";
import { isQuantity, type Quantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";
import { unitSymbol } from "../core/units.js";
import { type Block, blocksOf, givenCells, leavesOf } from "./pages/blocks.js";
import { Book } from "./pages/book.js";
import { sourcesPage, unitsPage } from "./pages/closing-pages.js";
import { formatFor, numberIn } from "./pages/figures.js";
import { givensPage } from "./pages/givens-page.js";
import { limitBook } from "./pages/limits.js";
import { workedPage } from "./pages/worked-page.js";
import { groupRow, type Page, type Row } from "./workbook/page.js";
import { writeWorkbook } from "./workbook/write-workbook.js";

/** How a workbook is written. */
export interface WorkbookOptions {
  /** What stands above its first sheet. */
  readonly title?: string;
  /** Calculations whose limits the cells keep: beyond them there is no answer, as in a call. The catalogue, or some of it. */
  readonly limitsOf?: readonly AnyCallable[];
}

/**
 * Writes solutions as a workbook (.xlsx) with live formulas: change a given in any spreadsheet program, and the answers
 * follow. It has a sheet of givens, one for each solution, one of unit factors, and one of cautions, assumptions and
 * sources. An answer of one solution that was handed to another is linked there.
 *
 * What a composed function decides by itself (a layout, a choice between formulas) does not change with the cells; its
 * formulas do. Numbers are binary there, so round-ups are guarded against their last digits.
 *
 * @param solutions - what `.solve` gives, of our calculations or your own
 * @param options - a title, and whose limits the cells keep
 * @returns the bytes of the file; the same input gives the same bytes
 * @example
 * ```ts
 * const wall = coursedFace.solve({ area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" });
 * const file = workbook([wall], { title: "Joints of the north wall", limitsOf: [coursedFace] });
 * file.length > 1000; // true
 * ```
 */
export function workbook(solutions: readonly Solution[], options: WorkbookOptions = {}): Uint8Array {
  const book = new Book(limitBook(options.limitsOf ?? []));
  const sheets = solutions.map((solution) => ({ solution, title: book.title(solution.title), leaves: new Set(leavesOf(solution)) }));
  const blocks = blocksOf(sheets.flatMap(({ leaves }) => [...leaves].map((leaf) => ({ heading: leaf.title, solution: leaf }))), book);
  const givens = givensPage(options.title ?? "Givens", givenCells(blocks, book), book);
  const shown = new Set<Block>();
  const worked = sheets.map(({ solution, title, leaves }): Page => {
    // What two solutions have in common stands with the first.
    const own = blocks.filter((block) => leaves.has(block.solution) && !shown.has(block));
    for (const block of own) shown.add(block);
    return workedPage(title, solution.title, own, book, () => solution.steps.length > 0 ? [] : composedRows(solution, book));
  });
  return writeWorkbook([givens, ...worked, unitsPage(book), sourcesPage(solutions, book)]);
}

/** What a composed function was told in words, and what it answers: linked where a formula gives it. */
function composedRows({ given, answers }: Solution, book: Book): readonly Row[] {
  const words = given.flatMap(({ says, value }): Row[] => (isQuantity(value) ? [] : [[{ use: "text", value: says }, undefined, { use: "text", value: String(value) }]]));
  const entries = typeof answers === "object" && answers !== null ? Object.entries(answers as Readonly<Record<string, unknown>>) : [];
  const found = entries.filter((entry): entry is [string, Quantity] => isQuantity(entry[1])).map(([name, value]) => answerRow(name, value, book));
  return [...group("told in words; the formulas are those it leads to", words), ...group("answers", found)];
}

function group(heading: string, rows: readonly Row[]): readonly Row[] {
  return rows.length === 0 ? [] : [groupRow(heading, 8), ...rows, []];
}

function answerRow(name: string, value: Quantity, book: Book): Row {
  const [number, formula] = [numberIn(value, value.unit), book.shownOf(value)];
  return [
    { use: "strong", value: name },
    undefined,
    { use: "answer", value: number, format: formatFor(number, false, value.dimension), ...(formula === undefined ? {} : { formula }) },
    { use: "text", value: unitSymbol(value.unit) },
    undefined,
    undefined,
    { use: "faint", value: formula === undefined ? "worked out by the program; it does not follow a change" : "" },
  ];
}
