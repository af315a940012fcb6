import type { Solution } from "../core/solution.js";
import { figureBox, nameBox } from "./boxes.js";
import { boxMathml, markupText } from "./formula-mathml.js";
import type { RenderOptions } from "./reading.js";
import type { Block, Cell, Section, Steps, WorkedStep } from "./section.js";
import { tell } from "./tell.js";
import { stepNotes, stepTitle, typedLines } from "./typed.js";
import { type TypesetLine, typesetWays } from "./typeset.js";

/**
 * A solution in MathML, with the same content as `sentence`: one `math` element that stands in HTML, in an e-book or in a
 * file of its own. Names that users chose are escaped.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants, and what of it is shown
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * mathml(solution).startsWith('<math xmlns="http://www.w3.org/1998/Math/MathML"'); // true
 * ```
 */
export function mathml(solution: Solution, options: RenderOptions = {}): string {
  const section = tell(solution, options);
  return `<math xmlns="${namespace}" display="block" alttext="${markupText(section.title)}">${table(sectionRows(section))}</math>\n`;
}

const namespace = "http://www.w3.org/1998/Math/MathML";

/** Cells are rows of a table, one column or more. */
function table(rows: readonly (readonly string[])[], align = "left"): string {
  const inside = rows.map((cells) => `<mtr>${cells.map((cell) => `<mtd>${cell}</mtd>`).join("")}</mtr>`);
  return `<mtable displaystyle="true" columnalign="${align}">${inside.join("")}</mtable>`;
}

function words(text: string): string {
  return text === "" ? "<mrow></mrow>" : `<mtext>${markupText(text)}</mtext>`;
}

function sectionRows({ title, blocks, parts }: Section): readonly (readonly string[])[] {
  return [[words(title)], ...blocks.flatMap((block) => [[words(block.title)], ...blockRows(block)]), ...parts.flatMap(sectionRows)];
}

function blockRows(block: Block): readonly (readonly string[])[] {
  switch (block.kind) {
    case "table":
      return [[table([block.head.map(words), ...block.rows.map((cells) => cells.map(cellMathml))])]];
    case "list":
      return block.lines.map((line, index) => [words(`${block.numbered ? `[${String(index + 1)}]` : "•"} ${line}`)]);
    case "steps":
      return block.steps.flatMap((step, index) => [
        [words(`${String(index + 1)}. ${stepTitle(step)}`)],
        ...stepMathml(step, block).flatMap(({ title, rows }) => [...(title === "" ? [] : [[words(title)]]), [rows]]),
        ...(block.blank ? [] : stepNotes(step).map((note) => [words(note)])),
      ]);
  }
}

function cellMathml(cell: Cell): string {
  const parts = cell.map((one) => (typeof one === "string" ? words(one) : boxMathml("symbol" in one ? nameBox(one) : figureBox(one))));
  return parts.length === 1 ? parts.join("") : `<mrow>${parts.join("")}</mrow>`;
}

/** A cell as an element that stands in HTML. */
export function cellElement(cell: SymbolCell): string {
  return `<math alttext="${markupText(cell.symbol)}">${boxMathml(nameBox(cell))}</math>`;
}

type SymbolCell = Extract<Cell[number], { readonly symbol: string }>;

/** The lines of a step as tables, lined up at their signs; one for each system of units that is shown. */
function stepMathml(step: WorkedStep, block: Steps): readonly { readonly title: string; readonly rows: string }[] {
  return typesetWays(step, block).map(({ title, lines }) => ({ title, rows: table(lines.map(lineCells), "right center left") }));
}

function lineCells({ left, sign, right }: TypesetLine): readonly string[] {
  return [boxMathml(left), `<mo>${sign}</mo>`, boxMathml(right)];
}

/** The lines of a step as elements that stand in HTML, each told in plain characters too. */
export function stepElements(step: WorkedStep, block: Steps): readonly { readonly title: string; readonly math: string }[] {
  return stepMathml(step, block).map(({ title, rows }, index) => {
    const way = step.ways[index];
    const told = way === undefined ? [] : typedLines({ ...step, ways: [{ ...way, title: "" }] }, block);
    return { title, math: `<math display="block" alttext="${markupText(told.map((line) => line.trim()).join("; "))}">${rows}</math>` };
  });
}
