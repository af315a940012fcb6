import { basisText } from "../../core/basis.js";
import type { Solution } from "../../core/solution.js";
import { unitSymbol } from "../../core/units.js";
import { headRow, type Page, type Row } from "../workbook/page.js";
import type { Book } from "./book.js";
import { baseUnit, factorName, isBase, sizeCell, zeroOf } from "./figures.js";

/** The sheet of units: the size of each in base units, under its name. */
export function unitsPage(book: Book): Page {
  const units = book.units.filter((unit) => !isBase(unit));
  return {
    title: "Units",
    widths: [14, 22, 14, 22],
    heads: 3,
    rows: [
      [{ use: "title", value: "Units" }],
      [{ use: "note", value: "One of a unit in base units; for a temperature also where its scale begins. Formulas take the factors from here." }],
      headRow(["unit", "in base units", "base unit", "begins at"], ["in base units", "begins at"]),
      ...units.map((unit): Row => [
        { use: "text", value: unitSymbol(unit) },
        { use: "number", ...sizeCell(unit), name: factorName(unit) },
        { use: "text", value: baseUnit(unit) },
        zeroOf(unit) === 0 ? { use: "text", value: "" } : { use: "number", value: zeroOf(unit), name: factorName(unit, "zero") },
      ]),
    ],
  };
}

/** The sheet that says what was assumed, what to beware of, and what the figures stand on. */
export function sourcesPage(solutions: readonly Solution[], book: Book): Page {
  const together = (pick: (one: Solution) => readonly string[]): readonly string[] => [...new Set(solutions.flatMap(pick))];
  // Assumed values are givens of the workbook; what was assumed besides is said in words.
  for (const basis of solutions.flatMap(({ bases }) => bases)) book.source(basis);
  const section = (heading: string, texts: readonly string[], numbered = false): readonly Row[] =>
    texts.length === 0
      ? []
      : [
          [{ use: "group", value: "" }, { use: "group", value: heading }],
          ...texts.map((text, index): Row => [{ use: "faint", value: numbered ? `[${String(index + 1)}]` : "" }, { use: "text", value: text }]),
          [],
        ];
  return {
    title: "Sources",
    widths: [6, 110],
    heads: 1,
    landscape: true,
    rows: [
      [undefined, { use: "title", value: "Cautions, assumptions, sources" }],
      ...section("Beware", together(({ cautions }) => cautions)),
      ...section("Assumed", together(({ assumptions }) => assumptions)),
      ...section("Sources", book.sources.map(basisText), true),
    ],
  };
}
