import type { AnyCallable } from "../core/callable.js";
import type { Definition } from "../core/definition.js";
import { InputError, nearest, type Problem, problem } from "../core/problems.js";
import { isNought } from "../core/quantity-arithmetic.js";
import { refusal } from "../core/refuse-all.js";
import type { Solution, Step } from "../core/solution.js";
import type { System } from "../core/units.js";
import type { Words } from "../core/wording.js";
import { drawFrom } from "./draw.js";
import { type Drawing, drawInputs, type Level } from "./draw-input.js";
import type { Exercise } from "./drawn-exercise.js";
import { mistakesIn } from "./mistakes.js";
import { problemWords } from "./problem-words.js";
import { say } from "./refusals.js";
import { digitsOf } from "./same-answer.js";
import { unknownNames, type Vary, wishedValues } from "./vary.js";

/** How an exercise is drawn. */
export interface ExerciseOptions {
  /** A whole number: the same seed gives the same exercise. */
  readonly seed: number;
  /** How inputs are drawn, by name; as is usual on a wall where nothing is said. */
  readonly vary?: Readonly<Record<string, Vary>>;
  /**
   * 1: round values, defaults left as they are. 2: fractions as the tape has them, some defaults given. 3: feet and
   * inches, all defaults given, some values in the units of the other system. 2 unless told otherwise.
   */
  readonly level?: Level;
  /** The system of units; that of the United States unless told otherwise. */
  readonly units?: System;
  /** The step that is asked for; the last unless told otherwise. */
  readonly ask?: string;
  /** Significant digits of the answer; 4 unless told otherwise. A whole number has all of its digits. */
  readonly digits?: number;
}

/** So often values are drawn before a wider range is tried, and so wide it gets. */
const draws = 250;
const widenings = [1, 3, 10, 40];

/**
 * Draws an exercise: values as they are met on a wall, within the limits of the calculation, that have an answer.
 *
 * A composed function has no formulas to ask for.
 *
 * @throws InputError if an option cannot be read, or the limits leave nothing to draw
 * @throws TypeError if it is given something that is no calculation
 * @example
 * ```ts
 * const one = exercise(bagYield, { seed: 7, vary: { dryMass: "50 lb", water: ["5 qt", "6 qt"] } });
 * one.given.dryMass; // "50 lb"
 * one.asked.name; // "bagYield"
 * ```
 */
export function exercise(calculation: AnyCallable, { seed, vary = {}, level = 2, units = "us", ask, digits = 4 }: ExerciseOptions): Exercise {
  const definition = definitionOf(calculation);
  const asked = ask ?? Object.keys(definition.steps).at(-1) ?? "";
  const problems: Problem[] = [...optionProblems({ seed, level, digits }), ...unknownNames(vary, Object.keys(definition.given)), ...askProblems(asked, definition)];
  const wished = new Map<string, readonly (string | number)[]>();
  for (const [name, one] of Object.entries(vary)) {
    const row = definition.given[name];
    if (row !== undefined) wished.set(name, wishedValues(name, row, one, problems));
  }
  if (problems.length > 0) throw new InputError("exercise", problems);
  const draw = drawFrom(seed, definition.id);
  const { given, solution } = drawnSolution(calculation, definition, asked, { draw, level, units, wished, widened: 1, known: new Map() });
  const step = solution.steps.find(({ name }) => name === asked) as Step;
  const shownDigits = digitsOf(step, digits);
  return Object.freeze({
    id: definition.id,
    title: definition.title,
    seed,
    level,
    given: Object.freeze(given),
    asked: step,
    digits: shownDigits,
    problem: problemWords(solution, step, shownDigits),
    solution,
    mistakes: Object.freeze(mistakesIn(solution, step, shownDigits)),
  });
}

/**
 * Whether an exercise can be drawn from it: it is made of formulas.
 *
 * @example
 * ```ts
 * hasFormulas(bagYield); // true
 * hasFormulas(boardLayout); // false
 * ```
 */
export function hasFormulas(of: AnyCallable): boolean {
  return typeof of === "function" && "definition" in of;
}

function definitionOf(calculation: AnyCallable): Definition {
  const { definition } = calculation as Partial<{ readonly definition: Definition }>;
  if (definition === undefined) throw new TypeError(`an exercise is drawn from a calculation made of formulas; ${typeof calculation === "function" ? calculation.id : String(calculation)} is none`);
  return definition;
}

function optionProblems({ seed, level, digits }: { readonly seed: number; readonly level: number; readonly digits: number }): readonly Problem[] {
  const wrong = (path: string, given: unknown, wanted: Words): Problem => problem({ code: "refused", path: [path], given: String(given), wanted });
  return [
    ...(Number.isSafeInteger(seed) ? [] : [wrong("seed", seed, say("giveWhole"))]),
    ...([1, 2, 3].includes(level) ? [] : [wrong("level", level, say("giveLevel"))]),
    ...(Number.isInteger(digits) && digits >= 2 && digits <= 15 ? [] : [wrong("digits", digits, say("giveWholeFromTo", { least: 2, most: 15 }))]),
  ];
}

function askProblems(asked: string, { steps }: Definition): readonly Problem[] {
  if (Object.hasOwn(steps, asked)) return [];
  const names = Object.keys(steps);
  const near = nearest(asked, names);
  return [problem({ code: "unknown", path: ["ask"], given: "", wanted: near === undefined ? { kind: "key", of: names } : { kind: "near", key: near } })];
}

/** Inputs with the solution they have. */
interface Drawn {
  readonly given: Readonly<Record<string, string | number>>;
  readonly solution: Solution;
}

/** Draws until there is an answer, and one that is not nought if that can be; where nothing usual has one, from ever wider ranges. */
function drawnSolution(calculation: AnyCallable, definition: Definition, asked: string, drawing: Drawing): Drawn {
  let last: readonly Problem[] = [];
  let nought: Drawn | undefined;
  for (const widened of widenings) {
    for (let count = 0; count < draws; count += 1) {
      const given = drawInputs(definition, { ...drawing, widened });
      const tried = calculation.try(given);
      if (!tried.ok) last = tried.problems;
      else if (!tried.solution.steps.some(({ name, value }) => name === asked && isNought(value))) return { given, solution: tried.solution };
      else nought = { given, solution: tried.solution };
    }
    if (nought !== undefined) return nought;
  }
  const tried = problem(refusal([], say("inDraws", { count: draws * widenings.length }), say("nothingDrawn"), "noAnswer"));
  throw new InputError("exercise", [tried, ...last]);
}
