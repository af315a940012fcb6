import type { Solution, Step } from "../core/solution.js";
import type { Level } from "./draw-input.js";
import type { Mistake } from "./mistake.js";

/** A problem with its answer and the usual mistakes. */
export interface Exercise {
  readonly id: string;
  readonly title: string;
  readonly seed: number;
  readonly level: Level;
  /** What is given, as it was drawn. */
  readonly given: Readonly<Record<string, string | number>>;
  /** What is asked, with its answer. */
  readonly asked: Step;
  /** Significant digits of the answer. */
  readonly digits: number;
  /** The problem in words. */
  readonly problem: string;
  readonly solution: Solution;
  /** The usual mistakes that give another answer here, each with that answer. */
  readonly mistakes: readonly Mistake[];
}
