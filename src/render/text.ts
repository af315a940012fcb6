import type { Solution } from "../core/solution.js";
import type { RenderOptions } from "./reading.js";
import type { Block, Section, Steps, Table } from "./section.js";
import { tell } from "./tell.js";
import { cellText, stepNotes, stepTitle, typedLines } from "./typed.js";

/**
 * A solution as plain text: what is asked and given, each step with its formula, conversions and numbers, the answers,
 * what was assumed, what to beware of, and the sources. `=` stands before a figure that says all of it, `≈` before a
 * rounded one.
 *
 * @param solution - what `.solve` gives
 * @param options - units and digits the reader wants, and what of it is shown
 * @throws TypeError if it is given something that is no solution
 * @example
 * ```ts
 * const solution = bagYield.solve({ dryMass: "50 lb", water: "6 qt", wetDensity: "124 lb/ft3" });
 * text(solution).split("\n")[0]; // "Yield of a bag by density"
 * ```
 */
export function text(solution: Solution, options: RenderOptions = {}): string {
  return `${sectionLines(tell(solution, options)).join("\n")}\n`;
}

function sectionLines({ title, blocks, parts }: Section): readonly string[] {
  const name = plain(title);
  const all = [[name, "=".repeat(name.length)], ...blocks.map(blockLines), ...parts.map(sectionLines)];
  return all.flatMap((lines, index) => (index === 0 ? lines : ["", ...lines]));
}

function blockLines(block: Block): readonly string[] {
  const lines = block.kind === "table" ? tableLines(block) : block.kind === "steps" ? block.steps.flatMap((_, index) => stepLines(block, index)) : listLines(block);
  return [plain(block.title), ...lines.map((line) => `  ${line}`.trimEnd())];
}

function listLines({ lines, numbered }: Extract<Block, { readonly kind: "list" }>): readonly string[] {
  return lines.map((line, index) => `${numbered ? `[${String(index + 1)}]` : "-"} ${plain(line)}`);
}

function stepLines(block: Steps, index: number): readonly string[] {
  const step = block.steps[index];
  if (step === undefined) return [];
  const lines = [...typedLines(step, block), ...(block.blank ? [] : stepNotes(step))];
  return [`${String(index + 1)}. ${plain(stepTitle(step))}`, ...lines.map((line) => `   ${line}`)];
}

function tableLines({ head, rows, needsHead }: Table): readonly string[] {
  const body = rows.map((row) => row.map(cellText));
  return columns(needsHead ? [head, head.map((title) => "-".repeat(title.length)), ...body] : body);
}

/** Lines up cells in columns. */
function columns(rows: readonly (readonly string[])[]): readonly string[] {
  const flat = rows.map((row) => row.map(plain));
  const widths: number[] = [];
  for (const row of flat) row.forEach((cell, index) => (widths[index] = Math.max(widths[index] ?? 0, cell.length)));
  return flat.map((row) => row.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join("  ").trimEnd());
}

/** Text on one line. */
function plain(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f\u2028\u2029]+/g, " ");
}
