import type { Basis } from "./basis.js";
import { callable, type Callable } from "./callable.js";
import type { Entries, Inputs, ReadInputs } from "./definition.js";
import { deepFrozen } from "./frozen.js";
import { assumptionsOf, givenLines } from "./lines.js";
import { InputError, type Path, type Problem, problem, problemAt, type Trouble } from "./problems.js";
import { fieldsOf } from "./fields.js";
import { readEntries } from "./read-entries.js";
import type { Line, Solution } from "./solution.js";
import type { StandardSchema } from "./standard-schema.js";

/** What a composed function works with while it runs. */
export interface Work {
  /**
   * Runs a calculation and keeps its solution as a part; a problem in it ends the run.
   *
   * @param at - where its inputs come from in ours, so that a problem names the right place
   */
  readonly part: <Input, A>(of: Callable<Input, A>, input: Input, at?: Path) => Solution<A>;
  /** Like `part`, but gives nothing where there is a problem and lets the run go on, so that all problems come together. */
  readonly attempt: <Input, A>(of: Callable<Input, A>, input: Input, at?: Path) => Solution<A> | undefined;
  /** Says that something was assumed. */
  readonly assume: (text: string) => void;
  /** Says what to beware of. */
  readonly caution: (text: string) => void;
  /** Names what the result stands on. */
  readonly stand: (on: Basis) => void;
  /** Adds a problem; the run ends in one error with all of them. */
  readonly problem: (trouble: Trouble) => void;
  /** Adds a problem and ends the run. */
  readonly refuse: (trouble: Trouble) => never;
}

interface ComposedOf<Read, A> {
  /** Topic and name: `"boards.layout"`. */
  readonly id: string;
  readonly title: string;
  readonly cautions?: readonly string[];
  readonly run: (given: Read, work: Work) => A;
}

/** Flat input: the same rows as a calculation's `given`, with choices besides. */
interface FromEntries<G extends Entries, A> extends ComposedOf<ReadInputs<G>, A> {
  readonly given: G;
}

/** Nested input, read by a schema; a zod schema is one. */
interface FromSchema<I, O, A> extends ComposedOf<O, A> {
  readonly reads: StandardSchema<I, O>;
}

/** What a schema may tell besides, as ours do: what a place of an input is, in words. */
export interface Telling {
  readonly saysAt?: (path: Path, input: unknown) => string | undefined;
}

/** A composed function with flat input: plain TypeScript that runs calculations, called like one. */
export interface Composed<G extends Entries, A> extends Callable<Inputs<G>, A> {
  /** What it is given: quantities and choices by name. */
  readonly given: G;
}

/** A composed function whose input is nested and read by a schema. */
export interface ComposedFrom<I, O, A> extends Callable<I, A> {
  /** The schema that reads its input. */
  readonly reads: StandardSchema<I, O>;
}

/**
 * Makes a function that runs calculations: it picks between them, lays out, or walks a record.
 *
 * @param definition - its id, title, what it is given (`given`: flat rows) or reads (`reads`: a schema), and `run`
 * @returns a function that gives the answers, with `.solve`, `.try` and the Standard Schema interface
 * @example
 * ```ts
 * const floorOrRoof = composed({
 *   id: "demo.floor-or-roof",
 *   title: "Area of a floor or of a roof",
 *   given: { side: { is: "length", unit: "ft", symbol: "s", says: "side of the square" }, of: { oneOf: ["floor", "roof"], says: "which" } },
 *   run: ({ side, of }) => ({ of, side }),
 * });
 * floorOrRoof({ side: "10 ft", of: "floor" }).of; // "floor"
 * ```
 */
export function composed<const G extends Entries, A>(definition: FromEntries<G, A>): Composed<G, A>;
export function composed<I, O, A>(definition: FromSchema<I, O, A>): ComposedFrom<I, O, A>;
export function composed<A>(definition: ComposedOf<never, A> & ({ readonly given: Entries } | { readonly reads: StandardSchema })): unknown {
  let reader: Inside["read"] | undefined;
  const read: Inside["read"] = (input, problems) => (reader ??= "given" in definition ? fromEntries(definition.given) : fromSchema(definition.reads))(input, problems);
  const solve = (input: unknown): Solution<A> => {
    const problems: Problem[] = [];
    const opened = read(input, problems);
    if (problems.length > 0) throw new InputError(definition.id, problems);
    return runComposed(definition, opened, problems);
  };
  const called = callable(definition, (input) => solve(input).answers, solve, "given" in definition ? { given: definition.given } : { reads: definition.reads });
  insides.set(called, { read, run: definition.run as Inside["run"] });
  return called;
}

/** What a composed function is made of. */
interface Inside {
  readonly read: (input: unknown, problems: Problem[]) => Opened;
  readonly run: (given: unknown, work: Work) => unknown;
}

const insides = new WeakMap<object, Inside>();

/** How a composed function reads and what it runs, for those who bring a work of their own; a calculation has no such inside. */
export function insideOf(of: object): Inside | undefined {
  return insides.get(of);
}

/** The input read, with the lines and assumptions that tell of it. */
interface Opened {
  readonly value: unknown;
  readonly given: readonly Line[];
  readonly assumptions: readonly string[];
}

function fromEntries(entries: Entries): (input: unknown, problems: Problem[]) => Opened {
  const fields = fieldsOf(deepFrozen(entries));
  return (input, problems) => {
    const found = readEntries(fields, input, problems);
    const value = Object.fromEntries(fields.all.map(({ name }, index) => [name, found.values[index]]));
    return { value, given: givenLines(fields, found), assumptions: assumptionsOf(found) };
  };
}

function fromSchema(schema: StandardSchema): (input: unknown, problems: Problem[]) => Opened {
  return (input, problems) => {
    const result = schema["~standard"].validate(input);
    if (result instanceof Promise) throw new Error("a schema that reads in its own time cannot be used here");
    if (result.issues === undefined) return { value: result.value, given: none, assumptions: none };
    for (const issue of result.issues) {
      const path = (issue.path ?? []).map((part) => (typeof part === "object" ? part.key : part)).map((key) => (typeof key === "number" ? key : String(key)));
      problems.push(isProblem(issue) ? issue.params.problem : problem({ code: "refused", path, given: "", wanted: issue.message }));
    }
    return { value: undefined, given: none, assumptions: none };
  };
}

const none: readonly never[] = Object.freeze([]);

/** An issue that carries one of our problems: the reader of quantities puts it there. */
function isProblem(issue: object): issue is { readonly params: { readonly problem: Problem } } {
  return "params" in issue && typeof issue.params === "object" && issue.params !== null && "problem" in issue.params;
}

/** Ends a run whose problems have been noted. */
class Ended extends Error {}

function runComposed<A>(definition: ComposedOf<never, A> & { readonly given?: Entries; readonly reads?: StandardSchema & Telling }, opened: Opened, problems: Problem[]): Solution<A> {
  const parts: Solution[] = [];
  const assumptions = new Set(opened.assumptions);
  const cautions = new Set(definition.cautions);
  const bases = new Set<Basis>(opened.given.flatMap(({ assumed, basis }) => (assumed && basis !== undefined ? [basis] : [])));
  const attempt: Work["attempt"] = (of, input, at = []) => {
    try {
      const solution = of.solve(input);
      parts.push(solution);
      for (const text of solution.assumptions) assumptions.add(text);
      for (const text of solution.cautions) cautions.add(text);
      for (const basis of solution.bases) bases.add(basis);
      return solution;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      problems.push(...error.problems.map((one) => problemAt(at, one)));
      return undefined;
    }
  };
  const end = (): never => {
    throw new Ended();
  };
  const note = (trouble: Trouble): void => void problems.push(problem({ says: saysOf(definition, trouble.path, opened.value), ...trouble }));
  const work: Work = {
    attempt,
    part: (of, input, at) => attempt(of, input, at) ?? end(),
    assume: (text) => void assumptions.add(text),
    caution: (text) => void cautions.add(text),
    stand: (on) => void bases.add(on),
    problem: note,
    refuse(trouble) {
      note(trouble);
      return end();
    },
  };
  const answers = endedOr(() => definition.run(opened.value as never, work), problems);
  if (problems.length > 0 || answers === undefined) throw new InputError(definition.id, problems);
  const [given, lists] = [opened.given, [assumptions, cautions].map((texts) => Object.freeze([...texts]))];
  const [assumed = [], beware = []] = lists;
  return Object.freeze({
    id: definition.id,
    title: definition.title,
    given,
    constants: Object.freeze([]),
    steps: Object.freeze([]),
    answers: deepFrozen(answers.value),
    parts: Object.freeze(parts),
    assumptions: assumed,
    cautions: beware,
    bases: deepFrozen([...bases]),
  });
}

/** What an input is, by its words in the definition. */
function saysOf({ given, reads }: { readonly given?: Entries; readonly reads?: Telling }, path: Path, input: unknown): string | undefined {
  const [name, ...within] = path;
  return given === undefined ? reads?.saysAt?.(path, input) : within.length > 0 ? undefined : given[String(name)]?.says;
}

/** What a run gives, or nothing where it ended, or tripped over what a problem noted before had left out. */
function endedOr<A>(run: () => A, problems: readonly Problem[]): { readonly value: A } | undefined {
  try {
    return { value: run() };
  } catch (error) {
    if (error instanceof Ended || problems.length > 0) return undefined;
    throw error;
  }
}
