import { type Amount, exactArithmetic, isExact, NoValue } from "./amount.js";
import type { Basis } from "./basis.js";
import type { Answers, Checked, Definition, Inputs, StepDefinition } from "./definition.js";
import { type Formula, parseFormula } from "./formula.js";
import type { DimensionName } from "./dimensions.js";
import { deepFrozen } from "./frozen.js";
import { InputError, type Problem, problem } from "./problems.js";
import { evaluate, governing, type Values } from "./program.js";
import { amountOf, makeQuantity, type Quantity } from "./quantity.js";
import { brokenLimit, type Fault, type Fields, fieldsWith, type Limit, limitsOf, quantityField, type ReadEntries, readEntries, shownUnits, type ShownUnits, spaced, type Told, writtenQuantity } from "./read-entries.js";
import type { Attempt, Line, Solution, Step } from "./solution.js";
import type { StandardSchema } from "./standard-schema.js";
import { type UnitCode, unitSystem } from "./units.js";

export { spaced };

/** What can be called: a calculation or a composed function, both alike. */
export interface Callable<Input, A> extends StandardSchema<Input> {
  /**
   * The answers alone.
   *
   * @throws {@link InputError} with every problem of the input
   */
  (input: Input): A;
  readonly id: string;
  readonly title: string;
  /** The answers with every step, what was assumed, what to beware of, and what it stands on. */
  readonly solve: (input: Input) => Solution<A>;
  /** Takes anything, and never throws for bad input. */
  readonly try: (input: unknown) => Attempt<A>;
}

/** A calculation or a composed function, whatever it is given and answers. */
export interface AnyCallable {
  (input: never): unknown;
  readonly id: string;
  readonly title: string;
  /** See {@link Callable}. */
  readonly solve: (input: never) => Solution;
  /** See {@link Callable}. */
  readonly try: (input: unknown) => Attempt<unknown>;
}

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

/** Dresses a way of answering and a way of solving as a {@link Callable}. */
export function callable<A>(
  { id, title }: { readonly id: string; readonly title: string },
  answer: (input: unknown) => A,
  solve: (input: unknown) => Solution<A>,
  besides: object = {},
): Callable<unknown, A> {
  const attempt = (input: unknown): Attempt<A> => {
    try {
      return Object.freeze({ ok: true, solution: solve(input) });
    } catch (error) {
      return Object.freeze({ ok: false, problems: problemsOf(error) });
    }
  };
  const validate = (input: unknown): { value: unknown } | { issues: readonly Problem[] } => {
    const tried = attempt(input);
    return tried.ok ? { value: input } : { issues: tried.problems };
  };
  const standard = Object.freeze({ version: 1, vendor: "settingbed", validate });
  return Object.freeze(Object.assign((input: unknown) => answer(input), { id, title, solve, try: attempt, "~standard": standard }, besides));
}

/** The problems of an error of bad input; any other error, such as that of a hostile getter, becomes one. */
function problemsOf(error: unknown): readonly Problem[] {
  let reason = "no reason given";
  try {
    if (error instanceof InputError) return error.problems;
    if (error instanceof Error) reason = error.message.slice(0, 200);
  } catch {
    // Even to ask what was thrown can throw.
  }
  return Object.freeze([problem({ code: "refused", path: [], given: "", wanted: `it could not be worked out (${reason})` })]);
}

/** A step made ready: its formulas by the input of a pair that each goes with; under no word where there is but one. */
interface ReadyStep extends Told<ShownUnits> {
  readonly is: DimensionName;
  readonly differs?: string;
  readonly limits: readonly Limit[];
  readonly formulas: readonly (readonly [input: string, formula: Formula])[];
}

/** A definition made ready: read once, at the first call. */
interface Ready {
  readonly definition: Definition;
  readonly fields: Fields;
  readonly constants: readonly (Line & { readonly value: Quantity })[];
  readonly steps: readonly ReadyStep[];
}

function prepare(definition: Definition): Ready {
  const constants = Object.entries(definition.constants ?? {}).map(([name, row]) => Object.freeze(lineOf({ ...row, name, shown: shownUnits(row) }, writtenQuantity(row.is, row.value, name), false)));
  const steps = Object.entries(definition.steps).map(([name, row]) => readyStep(name, row));
  return { definition, fields: fieldsWith(quantityField, definition.given), constants: Object.freeze(constants), steps };
}

function readyStep(name: string, row: StepDefinition): ReadyStep {
  const texts = typeof row.formula === "string" ? { "": row.formula } : row.formula;
  const formulas = Object.entries(texts).map(([input, text]) => [input, parseFormula(text)] as const);
  return { ...row, name, says: row.says ?? spaced(name), shown: shownUnits(row), limits: limitsOf(row, name), formulas };
}

/** The formula of a step, where the inputs chosen of the pairs are these. */
function formulaFor({ name, formulas }: ReadyStep, chosen: readonly string[]): Formula {
  for (const [input, formula] of formulas) if (input === "" || chosen.includes(input)) return formula;
  throw new Error(`${name} has no formula for this input`);
}

/** The formulas of a definition, where the inputs chosen of its pairs are these. */
export function formulasFor(definition: Definition, chosen: readonly string[]): readonly { readonly name: string; readonly formula: Formula }[] {
  return prepare(definition).steps.map((step) => ({ name: step.name, formula: formulaFor(step, chosen) }));
}

/** Every choice of one input from each pair of a definition; one empty choice where it has no pair. */
export function choicesOf(definition: Definition): readonly (readonly string[])[] {
  const pairs = new Map<string, string[]>();
  for (const [name, { either }] of Object.entries(definition.given)) if (either !== undefined) pairs.set(either, [...(pairs.get(either) ?? []), name]);
  return [...pairs.values()].reduce<readonly (readonly string[])[]>((choices, names) => choices.flatMap((choice) => names.map((name) => [...choice, name])), [[]]);
}

/** A call worked out: everything a solution is made of. */
interface Worked {
  readonly ready: Ready;
  readonly entries: ReadEntries;
  readonly amounts: ReadonlyMap<string, Amount>;
  readonly answers: Readonly<Record<string, Quantity>>;
}

function workOut(ready: Ready, input: unknown): Worked {
  const { definition, fields, constants, steps } = ready;
  const problems: Problem[] = [];
  const entries = readEntries(fields, input, problems);
  if (problems.length > 0) throw new InputError(definition.id, problems);
  const amounts = new Map<string, Amount>();
  const answers: Record<string, Quantity> = {};
  for (const { name, value } of constants) amounts.set(name, amountOf(value));
  fields.all.forEach(({ name }, index) => {
    const value = entries.read[index]?.value;
    if (typeof value === "object") amounts.set(name, amountOf(value));
  });
  for (const step of steps) {
    const { name, is, shown } = step;
    const amount = amountFor(step, formulaFor(step, entries.chosen), amounts, definition.id);
    amounts.set(name, amount);
    answers[name] = makeQuantity(is, amount, unitToShow(shown, entries.metric));
  }
  return { ready, entries, amounts, answers: Object.freeze(answers) };
}

/** The amount of a step; where it has no finite value, or is outside its own limits, that is a problem under its name. */
function amountFor(step: ReadyStep, formula: Formula, amounts: Values<Amount>, id: string): Amount {
  try {
    const amount = evaluate(formula, amounts, exactArithmetic);
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
export function unitToShow([first, second = first]: ShownUnits, metric: boolean): UnitCode {
  return metric && unitSystem(second) === "si" ? second : first;
}

function solutionOf({ ready: { definition, fields, constants, steps }, entries, amounts, answers }: Worked): Solution {
  const given = givenLines(fields, entries);
  const lines = steps.map((step): Step => {
    const { name, differs } = step;
    const amount = amounts.get(name) as Amount;
    const formula = formulaFor(step, entries.chosen);
    const governedBy = governing(formula, amounts, amount);
    const line = lineOf(step, answers[name] as Quantity, false) as Writable<Step>;
    line.formula = formula;
    line.exact = isExact(amount);
    if (governedBy !== undefined) line.governedBy = governedBy;
    if (differs !== undefined) line.differs = differs;
    return Object.freeze(line);
  });
  const bases = new Set<Basis>();
  for (const { assumed, basis } of given) if (assumed && basis !== undefined) bases.add(basis);
  for (const { basis } of [...constants, ...lines]) if (basis !== undefined) bases.add(basis);
  return Object.freeze({
    id: definition.id,
    title: definition.title,
    given,
    constants,
    steps: Object.freeze(lines),
    answers,
    parts: none,
    assumptions: assumptionsOf(fields, entries),
    cautions: definition.cautions ?? none,
    bases: Object.freeze([...bases]),
  });
}

const none: readonly never[] = Object.freeze([]);

/** A line while it is being written; spreading is too slow here. */
type Writable<T> = { -readonly [K in keyof T]: T[K] };

function lineOf<V extends Line["value"]>({ name, says, symbol, shown, basis }: Told, value: V, assumed: boolean): Writable<Line> & { value: V } {
  const line: Writable<Line> & { value: V } = { name, says, symbol, value, shown, assumed };
  if (basis !== undefined) line.basis = basis;
  return line;
}

/** The lines of what was given; an input left out has none. */
export function givenLines({ all }: Fields, { read }: ReadEntries): readonly Line[] {
  const lines = all.flatMap((field, index): Line[] => {
    const { value, assumed } = read[index] ?? { value: undefined, assumed: false };
    return value === undefined ? [] : [Object.freeze(lineOf(field, value, assumed))];
  });
  return Object.freeze(lines);
}

/** What was assumed because nothing was given, and on what ground. */
export function assumptionsOf({ all }: Fields, { read }: ReadEntries): readonly string[] {
  return Object.freeze(all.flatMap(({ assumption }, index) => (read[index]?.assumed === true && assumption !== "" ? [assumption] : [])));
}
