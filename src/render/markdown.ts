import type { Solution } from "../core/solution.js";
import type { RenderOptions } from "./reading.js";
import type { Block, Section, Steps, WorkedStep } from "./section.js";
import { tell } from "./tell.js";
import { cellText, stepNotes, stepTitle, typedLines } from "./typed.js";

/**
 * A solution as Markdown, with the same content as `sentence`: tables for what was given and answered, a block for
 * each worked step. Names that users chose are escaped.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants, and what of it is shown
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * markdown(solution, { units: "si" }).split("\n")[0]; // "# Yield of a bag by density"
 * ```
 */
export function markdown(solution: Solution, options: RenderOptions = {}): string {
  return `${sectionBlocks(tell(solution, options), 1).join("\n\n")}\n`;
}

function sectionBlocks({ title, blocks, parts }: Section, level: number): readonly string[] {
  const heading = (text: string, deeper: number): string => `${"#".repeat(Math.min(level + deeper, 6))} ${escaped(text)}`;
  return [
    heading(title, 0),
    ...blocks.flatMap((block) => [heading(block.title, 1), ...blockTexts(block)]),
    ...parts.flatMap((part) => sectionBlocks(part, level + 1)),
  ];
}

function blockTexts(block: Block): readonly string[] {
  switch (block.kind) {
    case "table":
      return [tableOf(block.head, block.rows.map((row) => row.map(cellText)))];
    case "list":
      return [block.lines.map((line, index) => (block.numbered ? `${String(index + 1)}. ${escaped(line)}` : `- ${escaped(line)}`)).join("\n")];
    case "steps":
      return block.steps.map((step, index) => stepText(block, step, index));
  }
}

/** A step: its words, and its lines in a block that is printed as it stands. */
function stepText(block: Steps, step: WorkedStep, index: number): string {
  const lines = typedLines(step, block).map((line) => `   ${plain(line)}`);
  const notes = block.blank ? [] : stepNotes(step);
  return [`${String(index + 1)}. ${escaped(stepTitle(step))}`, ["   ```text", ...lines, "   ```"].join("\n"), ...notes.map((note) => `   ${escaped(note)}`)].join("\n\n");
}

function tableOf(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]): string => `| ${cells.map(escaped).join(" | ")} |`;
  return [row(head), `|${head.map(() => "---").join("|")}|`, ...rows.map(row)].join("\n");
}

/** Text on one line, which cannot end the block it stands in. */
function plain(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, " ").replaceAll("```", "'''");
}

/** Text that Markdown and a browser print as it stands. */
function escaped(text: string): string {
  return plain(text)
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replace(/[\\`*_[\]|~#]/g, (letter) => `\\${letter}`)
    .replace(/^(\s*)([-+>])/, "$1\\$2")
    .replace(/^(\s*\d+)([.)])(?=\s|$)/, "$1\\$2")
    .replace(/(https?|ftp)(:\/\/)|(www)\./gi, (all) => all.replace(/[:.]/, (letter) => `&#${String(letter.charCodeAt(0))};`));
}
