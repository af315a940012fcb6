import { type Amount, exactArithmetic, isExact } from "./amount.js";
import type { Basis } from "./basis.js";
import type { Answers, Checked, Definition, Inputs } from "./definition.js";
import type { Formula } from "./formula.js";
import { parseFormula } from "./formula.js";
import { deepFrozen } from "./frozen.js";
import { InputError, type Problem, problem } from "./problems.js";
import { compile, evaluate, governing, type Program, type ProgramStep, type Run, StepFailure } from "./program.js";
import { amountOf, makeQuantity, type Quantity } from "./quantity.js";
import { brokenLimit, type Fields, fieldsOf, limitsOf, type ReadEntries, readEntries, shownUnits, writtenQuantity } from "./read-entries.js";
import type { Attempt, Line, Solution, Step } from "./solution.js";
import type { StandardSchema } from "./standard-schema.js";
import { type System, type UnitCode, unitSystem } from "./units.js";

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
  const unread = (reason: string): readonly Problem[] => Object.freeze([problem({ code: "refused", path: [], given: "", wanted: `it could not be read (${reason})` })]);
  try {
    if (error instanceof InputError) return error.problems;
    return unread(error instanceof Error ? error.message.slice(0, 200) : "no reason given");
  } catch {
    // Even to ask what was thrown can throw.
    return unread("no reason given");
  }
}

/** A step made ready: what its line says, its units, and its limits. */
interface ReadyStep {
  readonly row: Definition["steps"][string];
  readonly line: Omit<Line, "value" | "assumed" | "basis">;
  readonly limits: ReturnType<typeof limitsOf>;
}

/** A definition made ready: read once, at the first call. */
interface Ready {
  readonly definition: Definition;
  readonly fields: Fields;
  readonly constants: readonly Line[];
  readonly steps: ReadonlyMap<string, ReadyStep>;
  readonly programs: Map<string, Program>;
}

function prepare(definition: Definition): Ready {
  const constants = Object.entries(definition.constants ?? {}).map(([name, row]): Line => {
    const value = writtenQuantity(row.is, row.value, name);
    return Object.freeze({ name, says: row.says, symbol: row.symbol, value, shown: shownUnits(row), basis: row.basis, assumed: false });
  });
  const steps = Object.entries(definition.steps).map(([name, row]): [string, ReadyStep] => {
    const line = { name, says: row.says ?? spaced(name), symbol: row.symbol, shown: shownUnits(row) };
    return [name, { row, line, limits: limitsOf(row, name) }];
  });
  // A calculation's inputs are a composed function's without choices.
  const fields = fieldsOf(definition.given);
  return { definition, fields, constants: Object.freeze(constants), steps: new Map(steps), programs: new Map() };
}

/** `unitsPerArea` as `units per area`. */
export function spaced(name: string): string {
  return name.replace(/([A-Z])/g, (letter) => ` ${letter.toLowerCase()}`);
}

/** The formulas of a definition, where the inputs chosen of its pairs are these. */
export function formulasFor(definition: Definition, chosen: readonly string[]): readonly { readonly name: string; readonly formula: Formula }[] {
  return Object.entries(definition.steps).map(([name, { formula }]) => {
    if (typeof formula === "string") return { name, formula: parseFormula(formula) };
    const key = chosen.find((one) => Object.hasOwn(formula, one));
    const text = key === undefined ? undefined : formula[key];
    if (text === undefined) throw new Error(`${definition.id}: ${name} has no formula for ${chosen.join(" and ")}`);
    return { name, formula: parseFormula(text) };
  });
}

/** Every choice of one input from each pair of a definition; one empty choice where it has no pair. */
export function choicesOf(definition: Definition): readonly (readonly string[])[] {
  const pairs = new Map<string, string[]>();
  for (const [name, { either }] of Object.entries(definition.given)) if (either !== undefined) pairs.set(either, [...(pairs.get(either) ?? []), name]);
  return [...pairs.values()].reduce<readonly (readonly string[])[]>((choices, names) => choices.flatMap((choice) => names.map((name) => [...choice, name])), [[]]);
}

function programFor(ready: Ready, chosen: readonly string[]): Program {
  const key = chosen.join();
  const known = ready.programs.get(key);
  if (known !== undefined) return known;
  const { definition } = ready;
  const pairs = Object.entries(definition.given).filter(([name, { either }]) => either === undefined || chosen.includes(name));
  const names = [...pairs.map(([name]) => name), ...ready.constants.map(({ name }) => name)];
  const program = compile(names, formulasFor(definition, chosen));
  ready.programs.set(key, program);
  return program;
}

/** A call worked out: everything a solution is made of. */
interface Worked {
  readonly ready: Ready;
  readonly entries: ReadEntries;
  readonly program: Program;
  readonly run: Run<Amount>;
  readonly answers: Readonly<Record<string, Quantity>>;
}

function workOut(ready: Ready, input: unknown): Worked {
  const { definition, fields } = ready;
  const problems: Problem[] = [];
  const entries = readEntries(fields, input, problems);
  if (problems.length > 0) throw new InputError(definition.id, problems);
  const program = programFor(ready, entries.chosen);
  const values = entries.read.flatMap(({ value }) => (typeof value === "object" ? [amountOf(value)] : []));
  for (const { value } of ready.constants) values.push(amountOf(value as Quantity));
  const run = runChecked(ready, program, values);
  const answers: Record<string, Quantity> = {};
  for (const { name, slot } of program.steps) {
    const { row, line } = ready.steps.get(name) as ReadyStep;
    answers[name] = makeQuantity(row.is, run.values[slot] as Amount, unitToShow(line.shown, entries.system));
  }
  return { ready, entries, program, run, answers: Object.freeze(answers) };
}

/** Runs the program; a step without a finite value, or outside its own limits, is a problem under the step's name. */
function runChecked(ready: Ready, program: Program, values: readonly Amount[]): Run<Amount> {
  const fail = (name: string, trouble: Pick<Problem, "code" | "given" | "wanted">): never => {
    throw new InputError(ready.definition.id, [problem({ path: [name], says: ready.steps.get(name)?.line.says, ...trouble })]);
  };
  const check = ({ name }: ProgramStep, value: Amount): void => {
    const { limits, row, line } = ready.steps.get(name) as ReadyStep;
    const broken = limits.length === 0 ? undefined : brokenLimit(limits, value);
    if (broken !== undefined) fail(name, { code: broken.code, given: makeQuantity(row.is, value, unitToShow(line.shown, undefined)).toString(), wanted: broken.says });
  };
  try {
    return evaluate(program, values, exactArithmetic, check);
  } catch (error) {
    if (error instanceof StepFailure) return fail(error.step, { code: "noAnswer", given: "", wanted: error.message });
    throw error;
  }
}

/** The unit an answer is first shown in: that of the SI where all inputs are metric. */
function unitToShow(shown: readonly UnitCode[], system: System | undefined): UnitCode {
  const [first, second] = shown;
  if (first === undefined) throw new Error("a value is shown in no unit");
  return system === "si" && second !== undefined && unitSystem(second) === "si" ? second : first;
}

function solutionOf({ ready, entries, program, run, answers }: Worked): Solution {
  const { definition } = ready;
  const bases = new Set<Basis>();
  const given = givenLines(ready.fields, entries);
  for (const { assumed, basis } of given) if (assumed && basis !== undefined) bases.add(basis);
  for (const { basis } of ready.constants) if (basis !== undefined) bases.add(basis);
  const steps = program.steps.map((step): Step => {
    const { row, line } = ready.steps.get(step.name) as ReadyStep;
    const governedBy = governing(step, run);
    bases.add(row.basis);
    const { name, says, symbol, shown } = line;
    const value = answers[name] as Quantity;
    const lasting: Writable<Step> = { name, says, symbol, value, shown, basis: row.basis, assumed: false, formula: step.formula, exact: isExact(run.values[step.slot] as Amount) };
    if (governedBy !== undefined) lasting.governedBy = governedBy;
    if (row.differs !== undefined) lasting.differs = row.differs;
    return Object.freeze(lasting);
  });
  return Object.freeze({
    id: definition.id,
    title: definition.title,
    given,
    constants: ready.constants,
    steps: Object.freeze(steps),
    answers,
    parts: noParts,
    assumptions: assumptionsOf(ready.fields, entries),
    cautions: definition.cautions ?? noParts,
    bases: Object.freeze([...bases]),
  });
}

/** A line while it is being written; spreading is too slow here. */
type Writable<T> = { -readonly [K in keyof T]: T[K] };

const noParts: readonly never[] = Object.freeze([]);

/** The lines of what was given; an input left out has none. */
export function givenLines({ all }: Fields, { read }: ReadEntries): readonly Line[] {
  const lines = all.flatMap((field, index): Line[] => {
    const { value, assumed } = read[index] ?? { value: undefined, assumed: false };
    if (value === undefined) return [];
    const { name, row } = field;
    const shown = field.kind === "quantity" ? field.shown : noParts;
    const symbol = field.kind === "quantity" ? field.row.symbol : name;
    const line: Writable<Line> = { name, says: row.says, symbol, value, shown, assumed };
    if (row.basis !== undefined) line.basis = row.basis;
    return [Object.freeze(line)];
  });
  return Object.freeze(lines);
}

/** What was assumed because nothing was given, and on what ground. */
export function assumptionsOf({ all }: Fields, { read }: ReadEntries): readonly string[] {
  return Object.freeze(all.flatMap((field, index) => (read[index]?.assumed === true && field.assumption !== "" ? [field.assumption] : [])));
}
