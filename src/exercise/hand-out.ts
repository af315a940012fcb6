import type { Solution } from "../core/solution.js";
import type { System } from "../core/units.js";
import { writeQuantity } from "../core/write-quantity.js";
import type { Exercise } from "./drawn-exercise.js";

/** What a renderer is told of an exercise; the renderers of `settingbed/render` take it. */
export interface HandOutOptions {
  readonly show: "problem" | "sheet" | "all";
  readonly asked: readonly string[];
  readonly digits: number;
  readonly notes?: readonly { readonly title: string; readonly lines: readonly string[] }[];
  readonly units?: System | "both";
}

/** An exercise on paper. */
export interface HandOut {
  readonly problem: string;
  /** The problem with blanks for each step. */
  readonly sheet: string;
  /** The worked solution, with the usual mistakes and what they give. */
  readonly key: string;
}

/**
 * Writes an exercise down: the problem, a blank sheet to work it on, and the key. It takes a renderer of
 * `settingbed/render` (`sentence`, `markdown`, `html`, `latex`, `mathml`), or one that calls it with options of your own.
 *
 * @example
 * ```ts
 * const { sheet } = handOut(exercise(bagYield, { seed: 7 }), text);
 * sheet.split("\n")[0]; // "Yield of a bag by density"
 * ```
 */
export function handOut({ solution, asked, digits, mistakes }: Exercise, render: (solution: Solution, options: HandOutOptions) => string): HandOut {
  const options = { asked: [asked.name], digits } as const;
  const lines = mistakes.map(({ says, answer }) => `${writeQuantity(answer, { digits }).text}: ${says.join("; or ")}`);
  return {
    problem: render(solution, { ...options, show: "problem" }),
    sheet: render(solution, { ...options, show: "sheet" }),
    key: render(solution, { ...options, show: "all", notes: [{ title: "Usual mistakes", lines }] }),
  };
}
