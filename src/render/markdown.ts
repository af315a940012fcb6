import { basisText } from "../core/basis.js";
import type { Line, Solution } from "../core/solution.js";
import { checkSolution, lineText, toldAnswers } from "./answers.js";
import type { RenderOptions } from "./reading.js";
import { type WorkedStep, workedSteps } from "./worked-lines.js";

/**
 * A solution as Markdown, with the same content as `text`: tables for what was given and answered, a block for
 * each worked step. Names that users chose are escaped.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * markdown(solution, { units: "si" }).split("\n")[0]; // "# Yield of a bag by density"
 * ```
 */
export function markdown(solution: Solution, options: RenderOptions = {}): string {
  checkSolution(solution);
  return `${section(solution, options, 1).join("\n\n")}\n`;
}

function section(solution: Solution, options: RenderOptions, level: number): readonly string[] {
  const { rows, tables } = toldAnswers(solution, options);
  const heading = (title: string, deeper = 1): string => `${"#".repeat(Math.min(level + deeper, 6))} ${escaped(title)}`;
  const list = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : [heading(title), lines.map((line) => `- ${escaped(line)}`).join("\n")]);
  const lines = (title: string, of: readonly Line[]): readonly string[] =>
    of.length === 0 ? [] : [heading(title), tableOf(["", "symbol", "value", ""], of.map((line) => [line.says, line.symbol, lineText(line, options), line.assumed ? "assumed" : ""]))];
  const steps = workedSteps(solution, options);
  return [
    heading(solution.title, 0),
    ...lines("Given", solution.given),
    ...lines("Constants", solution.constants),
    ...(steps.length === 0 ? [] : [heading("Worked"), ...steps.map(stepBlock)]),
    ...(rows.length === 0 ? [] : [heading(steps.length > 0 ? "Answers" : "Result"), tableOf(["", "value"], rows.map(({ name, text }) => [name, text]))]),
    ...tables.flatMap(({ name, head, rows: body }) => [heading(name), tableOf(head, body)]),
    ...list("Assumed", solution.assumptions),
    ...list("Beware", solution.cautions),
    ...list("Stands on", solution.bases.map(basisText)),
    ...(options.parts === false ? [] : solution.parts.flatMap((part) => section(part, options, level + 1))),
  ];
}

/** A step: its words, and its lines in a block that is printed as it stands. */
function stepBlock({ says, left, formula, conversions, numbers, results, governedBy, differs }: WorkedStep, index: number): string {
  const [first = "", ...others] = results;
  const pad = " ".repeat(left.length);
  const block = [...conversions, `${left} = ${formula}`, ...(numbers === "" ? [] : [`${pad} = ${numbers}`]), `${pad} ${first}`, ...others];
  const notes = [...(governedBy === undefined ? [] : [`Governed by \`${governedBy}\`.`]), ...(differs === undefined ? [] : [escaped(differs)])];
  return [`${String(index + 1)}. ${escaped(says)}`, `   \`\`\`text\n${block.map((line) => `   ${line}`).join("\n")}\n   \`\`\``, ...notes.map((note) => `   ${note}`)].join("\n\n");
}

function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]): string => `| ${cells.map(escaped).join(" | ")} |`;
  return [row(head), `|${head.map(() => "---").join("|")}|`, ...rows.map(row)].join("\n");
}

/** Text that Markdown and a browser print as it stands. */
function escaped(text: string): string {
  return text
    .replace(/[\u0000-\u001f\u007f]+/g, " ")
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replace(/[\\`*_[\]|~#]/g, (letter) => `\\${letter}`);
}
