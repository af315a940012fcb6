import type { AnyCallable } from "../../../src/core/callable.js";
import type { System } from "../../../src/core/units.js";
import { type Exercise, exercise, handOut, type Level } from "../../../src/exercise/index.js";
import { html as rendered } from "../../../src/render/index.js";
import { type Html, markup } from "./html.js";
import { withClasses } from "./solution-html.js";

/** Which exercise is drawn of a calculation. */
export interface Drawn {
  readonly seed: number;
  readonly level: Level;
  readonly units: System;
}

/** The exercise that stands on a page before another is drawn. */
export const firstDrawn: Drawn = { seed: 1, level: 2, units: "us" };

/** An exercise as a page shows it: to be worked on paper, and worked. */
export interface ShownExercise {
  readonly exercise: Exercise;
  /** What stands over the sheet: by it the same exercise is found again. */
  readonly name: string;
  readonly sheet: Html;
  readonly key: Html;
}

/** Draws an exercise and writes it down. */
export function shownExercise(run: AnyCallable, drawn: Drawn): ShownExercise {
  const one = exercise(run, drawn);
  const { sheet, key } = handOut(one, (solution, options) => rendered(solution, { ...options, units: drawn.units, formulas: "symbols", style: false }));
  const name = `${one.title}: exercise ${String(drawn.seed)}, values ${String(drawn.level)}, ${drawn.units === "si" ? "SI" : "United States"} units`;
  return { exercise: one, name, sheet: markup(withClasses(sheet)), key: markup(withClasses(key)) };
}
