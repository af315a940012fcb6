import type { Amount } from "../core/amount.js";
import { type Calculation, unitToShow } from "../core/calculation.js";
import type { AnyCallable } from "../core/callable.js";
import { insideOf, type Work } from "../core/composed.js";
import type { Definition } from "../core/definition.js";
import { isOpen } from "../core/open-amount.js";
import type { Problem } from "../core/problems.js";
import { evaluate } from "../core/program.js";
import { amountOf, isQuantity, makeQuantity, type Quantity } from "../core/quantity.js";
import { type Field, shownUnits } from "../core/fields.js";
import { readEntries } from "../core/read-entries.js";
import type { Solution } from "../core/solution.js";
import { formulasOf, keptOf } from "./kept.js";
import { type Trace, Untraceable } from "./trace.js";

/**
 * A work that traces the calculations it runs. What it gives of a solution are its id, its answers, what its last step
 * stands on, and its parts; there is no working. A problem ends the trace.
 */
export function tracedWork(trace: Trace, parts: Solution[] = []): Work {
  const nothing = (): void => undefined;
  const give = (): never => {
    throw new Untraceable();
  };
  const part: Work["part"] = <A>(of: AnyCallable, input: unknown): Solution<A> => {
    const solution = solutionOf(of, input, trace) as Solution<A>;
    parts.push(solution);
    return solution;
  };
  return { part, attempt: part, assume: nothing, caution: nothing, stand: nothing, problem: give, refuse: give };
}

function solutionOf(of: AnyCallable, input: unknown, trace: Trace): Solution {
  const inside = insideOf(of);
  if (inside === undefined) return tracedCalculation((of as unknown as Calculation).definition, input, trace);
  const problems: Problem[] = [];
  const { value } = inside.read(input, problems);
  if (problems.length > 0) throw new Untraceable();
  const parts: Solution[] = [];
  return { ...bare(of), answers: inside.run(value, tracedWork(trace, parts)), parts };
}

/** Works out a calculation in a trace: its formulas as they are, its limits as guards. */
function tracedCalculation(definition: Definition, input: unknown, trace: Trace): Solution {
  const kept = keptOf(definition);
  const { fields, constants, inputEdges, steps } = kept;
  const problems: Problem[] = [];
  const entries = readEntries({ ...fields, all: fields.all.map((field) => openField(field, definition)) }, input, problems);
  if (problems.length > 0) throw new Untraceable();
  const amounts = new Map<string, Amount>(constants);
  for (const [index, { name }] of fields.all.entries()) {
    const value = entries.values[index];
    if (typeof value !== "object") continue;
    amounts.set(name, amountOf(value));
    trace.within(amountOf(value), inputEdges.get(name) ?? { edges: [], whole: false });
  }
  const formulas = formulasOf(kept, definition, entries.chosen);
  const answers: Record<string, Quantity> = {};
  for (const [index, { name, limits }] of steps.entries()) {
    const [row, formula] = [definition.steps[name], formulas[index]?.formula];
    if (row === undefined || formula === undefined) throw new Error(`${name} has no formula`);
    const amount = evaluate(formula, amounts, trace.arithmetic);
    trace.within(amount, limits);
    amounts.set(name, amount);
    answers[name] = makeQuantity(row.is, amount, unitToShow(shownUnits(row), entries.metric));
  }
  const last = Object.values(definition.steps).at(-1);
  return { ...bare(definition), answers, steps: [{ basis: last?.basis }] as unknown as Solution["steps"] };
}

/** An input of which an open quantity is taken as it is: its limits are guards. */
function openField(field: Field, { given }: Definition): Field {
  const is = given[field.name]?.is;
  return { ...field, read: (value) => (isQuantity(value) && value.dimension === is && isOpen(amountOf(value)) ? value : field.read(value)) };
}

const none: readonly never[] = [];

function bare({ id, title }: { readonly id: string; readonly title: string }): Omit<Solution, "answers"> {
  return { id, title, given: none, constants: none, steps: none, parts: none, assumptions: none, cautions: none, bases: none };
}
