import { type Amount, exactArithmetic } from "./amount.js";
import type { Basis } from "./basis.js";
import type { Definition, StepDefinition } from "./definition.js";
import type { DimensionName } from "./dimensions.js";
import { type Formula, parseFormula } from "./formula.js";
import { lineOf } from "./lines.js";
import { readyFormula, valueless } from "./program.js";
import { amountOf, type Quantity } from "./quantity.js";
import { type Fields, fieldsWith, quantityField, shownUnits, type ShownUnits, type Told } from "./fields.js";
import { type Limit, limitsOf, writtenQuantity } from "./limits.js";
import type { Line } from "./solution.js";
import { spaced } from "./spaced.js";

/** A formula of a step, with the input of a pair that it goes with; an empty word where there is but one. */
interface ReadyFormula {
  readonly input: string;
  readonly formula: Formula;
  /** Works it out from the amounts at their places. */
  readonly run: (amounts: readonly Amount[]) => Amount;
}

/** A step made ready. */
export interface ReadyStep extends Told<ShownUnits> {
  readonly basis: Basis;
  readonly is: DimensionName;
  readonly differs: string | undefined;
  readonly limits: readonly Limit[];
  readonly formulas: readonly ReadyFormula[];
}

/** A definition made ready: read once, at the first call. */
export interface Ready {
  readonly definition: Definition;
  readonly fields: Fields;
  readonly constants: readonly (Line & { readonly value: Quantity })[];
  readonly steps: readonly ReadyStep[];
  /** The place of each name among the amounts of a call: inputs, constants, steps. */
  readonly places: ReadonlyMap<string, number>;
  /** The amounts of the constants. */
  readonly fixed: readonly Amount[];
}

/** Makes a definition ready. */
export function prepare(definition: Definition): Ready {
  const { given, constants = {}, steps } = definition;
  const places = new Map([given, constants, steps].flatMap(Object.keys).map((name, place) => [name, place]));
  const lines = Object.entries(constants).map(([name, row]) => lineOf({ ...row, name, shown: shownUnits(row) }, writtenQuantity(row.is, row.value, name), false));
  return {
    definition,
    fields: fieldsWith(quantityField, given),
    constants: Object.freeze(lines),
    steps: Object.entries(steps).map(([name, row]) => readyStep(name, row, places)),
    places,
    fixed: lines.map(({ value }) => amountOf(value)),
  };
}

function readyStep(name: string, row: StepDefinition, places: Ready["places"]): ReadyStep {
  const valueOf = (of: string): ReadyFormula["run"] => {
    const place = places.get(of) ?? -1;
    return (amounts) => amounts[place] ?? valueless(of);
  };
  const texts = typeof row.formula === "string" ? { "": row.formula } : row.formula;
  const formulas = Object.entries(texts).map(([input, text]): ReadyFormula => {
    const formula = parseFormula(text);
    return { input, formula, run: readyFormula(formula, valueOf, exactArithmetic) };
  });
  const { is, says = spaced(name), symbol, basis, differs } = row;
  // All alike in shape, which the engine reads fastest.
  return { name, says, symbol, shown: shownUnits(row), basis, is, differs, limits: limitsOf(row, name), formulas };
}

/** The formula of a step, where the inputs chosen of the pairs are these. */
export function formulaFor({ name, formulas }: ReadyStep, chosen: readonly string[]): ReadyFormula {
  const [first] = formulas;
  if (first?.input === "") return first;
  const found = formulas.find(({ input }) => chosen.includes(input));
  if (found === undefined) throw new Error(`${name} has no formula for this input`);
  return found;
}

/** The formulas of a definition, where the inputs chosen of its pairs are these. */
export function formulasFor(definition: Definition, chosen: readonly string[]): readonly { readonly name: string; readonly formula: Formula }[] {
  return prepare(definition).steps.map((step) => ({ name: step.name, formula: formulaFor(step, chosen).formula }));
}

/** Every choice of one input from each pair of a definition; one empty choice where it has no pair. */
export function choicesOf(definition: Definition): readonly (readonly string[])[] {
  const pairs = new Map<string, string[]>();
  for (const [name, { either }] of Object.entries(definition.given)) if (either !== undefined) pairs.set(either, [...(pairs.get(either) ?? []), name]);
  return [...pairs.values()].reduce<readonly (readonly string[])[]>((choices, names) => choices.flatMap((choice) => names.map((name) => [...choice, name])), [[]]);
}
