import { basisText } from "../core/basis.js";
import type { Line, Solution } from "../core/solution.js";
import { type AnswerTable, checkSolution, lineText, toldAnswers } from "./answers.js";
import type { RenderOptions } from "./reading.js";
import { type WorkedStep, workedSteps } from "./worked-lines.js";

/**
 * A solution as plain text: what was given, each step with its formula, conversions and numbers, the answers, what was
 * assumed, what to beware of, and the sources. `=` stands before a figure that says all of it, `≈` before a rounded one.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * text(solution).split("\n")[0]; // "Yield of a bag by density"
 * ```
 */
export function text(solution: Solution, options: RenderOptions = {}): string {
  checkSolution(solution);
  return `${section(solution, options).join("\n")}\n`;
}

function section(solution: Solution, options: RenderOptions): readonly string[] {
  const { rows, tables } = toldAnswers(solution, options);
  const isWorked = solution.steps.length > 0;
  const blocks = [
    [solution.title, "=".repeat(solution.title.length)],
    titled("Given", lineRows(solution.given, options)),
    titled("Constants", lineRows(solution.constants, options)),
    titled("Worked", workedSteps(solution, options).flatMap(stepLines)),
    titled(isWorked ? "Answers" : "Result", columns(rows.map(({ name, text: told }) => [name, told]))),
    ...tables.map((one) => titled(one.name, tableLines(one))),
    titled("Assumed", solution.assumptions.map((line) => `- ${line}`)),
    titled("Beware", solution.cautions.map((line) => `- ${line}`)),
    titled("Stands on", solution.bases.map((basis) => `- ${basisText(basis)}`)),
    ...(options.parts === false ? [] : solution.parts.map((part) => section(part, options))),
  ];
  return blocks.filter((block) => block.length > 0).flatMap((block, index) => (index === 0 ? block : ["", ...block]));
}

function titled(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [title, ...lines.map((line) => (line === "" ? "" : `  ${line}`))];
}

function lineRows(lines: readonly Line[], options: RenderOptions): readonly string[] {
  return columns(lines.map((line) => [line.says, line.symbol, lineText(line, options), line.assumed ? "(assumed)" : ""]));
}

function stepLines({ says, left, formula, conversions, numbers, results, governedBy, differs }: WorkedStep, index: number): readonly string[] {
  const [first = "", ...others] = results;
  const pad = " ".repeat(left.length);
  return [
    `${String(index + 1)}. ${says}`,
    ...conversions.map((line) => `   ${line}`),
    `   ${left} = ${formula}`,
    ...(numbers === "" ? [] : [`   ${pad} = ${numbers}`]),
    `   ${pad} ${first}`,
    ...others.map((line) => `   ${line}`),
    ...(governedBy === undefined ? [] : [`   governed by ${governedBy}`]),
    ...(differs === undefined ? [] : [`   note: ${differs}`]),
  ];
}

function tableLines({ head, rows }: AnswerTable): readonly string[] {
  return columns([head, head.map((title) => "-".repeat(title.length)), ...rows]);
}

/** Lines up cells in columns. */
function columns(rows: readonly (readonly string[])[]): readonly string[] {
  const flat = rows.map((row) => row.map((cell) => cell.replace(/[\u0000-\u001f\u007f]+/g, " ")));
  const widths: number[] = [];
  for (const row of flat) row.forEach((cell, index) => (widths[index] = Math.max(widths[index] ?? 0, cell.length)));
  return flat.map((row) => row.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join("  ").trimEnd());
}
