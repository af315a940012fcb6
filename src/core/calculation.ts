import { type Amount, isExact, NoValue } from "./amount.js";
import type { Basis } from "./basis.js";
import { type Callable, callable } from "./callable.js";
import type { Answers, Checked, Definition, Inputs } from "./definition.js";
import { deepFrozen } from "./frozen.js";
import { assumptionsOf, givenLines } from "./lines.js";
import { formulaFor, prepare, type Ready, type ReadyStep } from "./prepared.js";
import { InputError, type Problem, problem } from "./problems.js";
import { governing } from "./program.js";
import { amountOf, makeQuantity, type Quantity } from "./quantity.js";
import type { Fault, ShownUnits } from "./fields.js";
import { brokenLimit } from "./limits.js";
import { type ReadEntries, readEntries } from "./read-entries.js";
import type { Solution, Step } from "./solution.js";
import { type UnitCode, unitSystem } from "./units.js";

/** A calculation: formulas over inputs, with its definition for all to read. */
export interface Calculation<D extends Definition = Definition> extends Callable<Inputs<D["given"]>, Answers<D>> {
  readonly definition: D;
}

/**
 * Makes a calculation from its definition: what is given, constants, and steps with one formula each.
 *
 * @param definition - literals and imported plain constants only, so that a bundler can leave the calculation out
 * @returns a function that gives the answers, with `.solve`, `.try`, `.definition` and the Standard Schema interface
 * @throws Error at the first call, where a definition cannot be read: a formula that is none, a unit that is none
 * @example
 * ```ts
 * const rollArea = calculation({
 *   id: "demo.roll-area",
 *   title: "Area of a roll",
 *   given: {
 *     width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the roll", above: 0 },
 *     length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of the roll", above: 0 },
 *   },
 *   steps: {
 *     area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * length", basis: { kind: "derived", says: "geometry" } },
 *   },
 * });
 * rollArea({ width: "36 in", length: "50 ft" }).area.toString(); // "150 ft2"
 * ```
 */
export function calculation<const D extends Definition>(definition: D & Checked<D>): Calculation<D> {
  let ready: Ready | undefined;
  const work = (input: unknown): Worked => workOut((ready ??= prepare(deepFrozen<Definition>(definition))), input);
  const solve = (input: unknown): Solution<Answers<D>> => solutionOf(work(input)) as Solution<Answers<D>>;
  return callable(definition, (input) => work(input).answers as Answers<D>, solve, { definition }) as unknown as Calculation<D>;
}

/** A call worked out: everything a solution is made of. */
interface Worked {
  readonly ready: Ready;
  readonly entries: ReadEntries;
  /** The amounts at the places of their names. */
  readonly amounts: readonly Amount[];
  readonly answers: Readonly<Record<string, Quantity>>;
}

function workOut(ready: Ready, input: unknown): Worked {
  const { definition, fields, fixed, steps } = ready;
  const problems: Problem[] = [];
  const entries = readEntries(fields, input, problems);
  if (problems.length > 0) throw new InputError(definition.id, problems);
  const amounts: Amount[] = [];
  // An input that was left out keeps its place.
  for (const value of entries.values) amounts.push((typeof value === "object" ? amountOf(value) : undefined) as Amount);
  for (const amount of fixed) amounts.push(amount);
  const answers: Record<string, Quantity> = {};
  for (const step of steps) {
    const amount = amountFor(step, entries, amounts, definition.id);
    amounts.push(amount);
    answers[step.name] = makeQuantity(step.is, amount, unitToShow(step.shown, entries.metric));
  }
  return { ready, entries, amounts, answers: Object.freeze(answers) };
}

/** The amount of a step; where it has no finite value, or is outside its own limits, that is a problem under its name. */
function amountFor(step: ReadyStep, { chosen }: ReadEntries, amounts: readonly Amount[], id: string): Amount {
  try {
    const amount = formulaFor(step, chosen).run(amounts);
    const broken = brokenLimit(step.limits, amount);
    if (broken === undefined) return amount;
    throw stepError(id, step, { code: broken.code, given: makeQuantity(step.is, amount, step.shown[0]).toString(), wanted: broken.wanted });
  } catch (error) {
    throw error instanceof NoValue ? stepError(id, step, { code: "noAnswer", given: "", wanted: { kind: "value", reason: error.reason } }) : error;
  }
}

function stepError(id: string, { name, says }: ReadyStep, fault: Fault): InputError {
  return new InputError(id, [problem({ ...fault, path: [name], says })]);
}

/** The unit an answer is first shown in: that of the SI where all inputs are metric. */
export function unitToShow(shown: ShownUnits, metric: boolean): UnitCode {
  const second = metric ? shown[1] : undefined;
  return second !== undefined && unitSystem(second) === "si" ? second : shown[0];
}

/** A line while it is being written. */
type Writable<T> = { -readonly [K in keyof T]: T[K] };

function solutionOf({ ready, entries, amounts, answers }: Worked): Solution {
  const { definition, fields, constants, steps, places } = ready;
  const bases: Basis[] = [];
  const standOn = (basis: Basis | undefined): void => {
    if (basis !== undefined && !bases.includes(basis)) bases.push(basis);
  };
  const given = givenLines(fields, entries);
  for (const { assumed, basis } of given) if (assumed) standOn(basis);
  for (const { basis } of constants) standOn(basis);
  const values = { get: (name: string): Amount | undefined => amounts[places.get(name) ?? -1] };
  const lines = steps.map((step): Step => {
    const { name, says, symbol, shown, basis, differs } = step;
    const { formula } = formulaFor(step, entries.chosen);
    const value = answers[name] as Quantity;
    const amount = amountOf(value);
    const governedBy = governing(formula, values, amount);
    const line: Writable<Step> = { name, says, symbol, value, shown, assumed: false, basis, formula, exact: isExact(amount) };
    if (governedBy !== undefined) line.governedBy = governedBy;
    if (differs !== undefined) line.differs = differs;
    standOn(basis);
    return Object.freeze(line);
  });
  return Object.freeze({
    id: definition.id,
    title: definition.title,
    given,
    constants,
    steps: Object.freeze(lines),
    answers,
    parts: none,
    assumptions: assumptionsOf(entries),
    cautions: definition.cautions ?? none,
    bases: Object.freeze(bases),
  });
}

const none: readonly never[] = Object.freeze([]);
