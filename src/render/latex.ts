import type { Solution } from "../core/solution.js";
import { nameBox } from "./boxes.js";
import { boxLatex } from "./formula-latex.js";
import { latexText } from "./latex-text.js";
import type { PageOptions, RenderOptions } from "./reading.js";
import type { Block, Cell, Section, Steps, Table, WorkedStep } from "./section.js";
import { tell } from "./tell.js";
import { stepNotes, stepTitle } from "./typed.js";
import { type TypesetWay, typesetWays } from "./typeset.js";

/**
 * A solution in LaTeX, with the same content as `sentence`: a part to put into a document that uses the packages `amsmath`,
 * `array`, `longtable` and `textcomp`, or with `page` a whole document. Names that users chose are escaped.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants, and what of it is shown
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * latex(solution, { formulas: "symbols" }).split("\n")[0]; // "\\section*{Yield of a bag by density}"
 * ```
 */
export function latex(solution: Solution, options: RenderOptions & PageOptions = {}): string {
  const body = sectionTexts(tell(solution, options), 0).join("\n\n");
  return options.page === true ? `${head}\n${body}\n\n\\end{document}\n` : `${body}\n`;
}

const head = `\\documentclass[11pt]{article}
\\usepackage[margin=2cm]{geometry}
\\usepackage[utf8]{inputenc}
\\usepackage[T1]{fontenc}
\\usepackage{textcomp}
\\usepackage{amsmath}
\\usepackage{array}
\\usepackage{longtable}
\\setlength{\\parindent}{0pt}
\\begin{document}`;

const headings = ["section", "subsection", "subsubsection", "paragraph"] as const;

function heading(text: string, level: number): string {
  const name = headings[Math.min(level, headings.length - 1)] ?? "paragraph";
  return `\\${name}*{${latexText(text)}}`;
}

function sectionTexts({ title, blocks, parts }: Section, level: number): readonly string[] {
  return [heading(title, level), ...blocks.map((block) => `${heading(block.title, level + 1)}\n${blockText(block)}`), ...parts.flatMap((part) => sectionTexts(part, level + 1))];
}

function blockText(block: Block): string {
  switch (block.kind) {
    case "table":
      return tableText(block);
    case "list":
      return listOf(block.lines.map((line, index) => `\\item${block.numbered ? `[{[${String(index + 1)}]}]` : ""} ${latexText(line)}`), "itemize");
    case "steps":
      return listOf(block.steps.map((step) => stepText(block, step)), "enumerate");
  }
}

function listOf(items: readonly string[], kind: "itemize" | "enumerate"): string {
  return [`\\begin{${kind}}`, ...items, `\\end{${kind}}`].join("\n");
}

function stepText(block: Steps, step: WorkedStep): string {
  const notes = block.blank ? [] : stepNotes(step);
  return [`\\item ${latexText(stepTitle(step))}\\nopagebreak`, ...typesetWays(step, block).map((way) => wayText(way, block.blank ? " \\\\[3ex]\n" : " \\\\\n")), ...notes.map((note) => `${latexText(note)}\\par`)].join("\n");
}

/** The lines of a step, lined up at their signs. */
function wayText({ title, lines }: TypesetWay, end: string): string {
  const rows = lines.map(({ left, sign, right }) => `${boxLatex(left)} &${sign === "=" ? "=" : "\\approx"} ${boxLatex(right)}`);
  return `${title === "" ? "" : `\\par ${latexText(title)}\n`}\\begin{align*}\n${rows.join(end)}\n\\end{align*}`;
}

/** A table that may run over pages; the first column and those with long words wrap. */
function tableText({ head: titles, rows }: Table): string {
  const widest = titles.map((title, index) => Math.max(...title.split(" ").map((word) => word.length), ...rows.map((row) => plainLength(row[index] ?? []))));
  const all = widest.reduce((sum, width) => sum + Math.min(width, 40), 0) + 2 * widest.length;
  const isWide = widest.length > 6;
  const share = (width: number): string => Math.max(0.05, ((0.95 - 0.015 * widest.length) * Math.min(width, 40)) / Math.max(all - 2 * widest.length, 75)).toFixed(3);
  const columns = widest.map((width) => (width <= 18 && all <= 90 ? "l" : `>{\\raggedright\\arraybackslash}p{${share(width)}\\linewidth}`));
  const line = (cells: readonly string[]): string => `${cells.join(" & ")} \\\\`;
  return [
    ...(isWide ? ["{\\footnotesize\\setlength{\\tabcolsep}{3pt}"] : []),
    `\\begin{longtable}[l]{@{}${columns.join("")}@{}}`,
    line(titles.map((title) => `\\textit{${latexText(title)}}`)),
    "\\hline",
    "\\endhead",
    ...rows.map((row) => line(row.map(cellText))),
    "\\end{longtable}",
    ...(isWide ? ["}"] : []),
  ].join("\n");
}

function plainLength(cell: Cell): number {
  return cell.reduce((sum, one) => sum + (typeof one === "string" ? one.length : "symbol" in one ? 3 : one.number.length + one.unit.length + 1), 0);
}

function cellText(cell: Cell): string {
  return cell.map((one) => {
    if (typeof one === "string") return latexText(one);
    if ("symbol" in one) return `$${boxLatex(nameBox(one))}$`;
    // A fraction of an inch, 5-3/8, is no difference.
    return `${latexText(one.number)}${one.unit === "" ? "" : `$${boxLatex({ kind: "unit", text: one.unit })}$`}`;
  }).join("");
}
