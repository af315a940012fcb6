import type { Basis } from "./basis.js";
import type { DimensionName } from "./dimensions.js";
import type { FunctionName } from "./formula.js";
import type { Quantity } from "./quantity.js";
import type { QuantityText, Readable } from "./read-quantity.js";
import type { UnitOf } from "./units.js";

/** The unit a value is shown in: one for all readers, or the one of the United States and the one of the SI. */
type ShownUnit<D extends DimensionName> = ShownCode<D> | readonly [us: ShownCode<D>, si: ShownCode<D>];
type ShownCode<D extends DimensionName> = UnitOf<D> | (D extends "temperatureDifference" ? "degF" | "degC" | "K" : never);

/** A limit: a text with its unit, or a bare number for a ratio, a count, or nought. */
export type LimitText<D extends DimensionName> = QuantityText<D> | 0 | (D extends "ratio" | "count" ? number : never);

/** The range a value must lie in; each part stands only where it holds. */
interface Limits<D extends DimensionName> {
  readonly above?: LimitText<D>;
  readonly atLeast?: LimitText<D>;
  readonly below?: LimitText<D>;
  readonly atMost?: LimitText<D>;
  /** Where only a whole number will do: coats, readings, screws in a box. */
  readonly whole?: D extends "count" ? true : never;
}

/** A default never stands without what it stands on. */
type Default<D extends DimensionName> =
  | { readonly default?: undefined; readonly basis?: Basis }
  | { readonly default: QuantityText<D> | (D extends "ratio" | "count" ? number : never); readonly basis: Basis };

interface Shown<D extends DimensionName> {
  readonly is: D;
  /** Needed for all but a ratio and a count, which stand without a unit unless told otherwise. */
  readonly unit?: ShownUnit<D>;
  readonly symbol: string;
}

type GivenFor<D extends DimensionName> = Shown<D> &
  Limits<D> &
  Default<D> & {
    /** What the input is, in words that stand alone: the error, the page and the schema print them. */
    readonly says: string;
    /** Givens with the same word exclude each other: exactly one of them is given. */
    readonly either?: string;
  };

/** One input of a calculation. */
export type GivenDefinition = { [D in DimensionName]: GivenFor<D> }[DimensionName];

type ConstantFor<D extends DimensionName> = Shown<D> & {
  readonly value: QuantityText<D> | (D extends "ratio" | "count" ? number : never);
  readonly says: string;
  readonly basis: Basis;
};

/** One constant of a calculation, with what it stands on. */
export type ConstantDefinition = { [D in DimensionName]: ConstantFor<D> }[DimensionName];

type StepFor<D extends DimensionName> = Shown<D> &
  Limits<D> & {
    /** One formula, or one for each of a pair of either/or givens. */
    readonly formula: string | Readonly<Record<string, string>>;
    readonly basis: Basis;
    /** What the step works out, where its name does not tell. */
    readonly says?: string;
    /** Where it departs from its source, and why. */
    readonly differs?: string;
  };

/** One step of a calculation: a formula under a name, which is an answer too. */
export type StepDefinition = { [D in DimensionName]: StepFor<D> }[DimensionName];

/** A calculation as data: literals and plain imported constants, so that a bundler can leave it out. */
export interface Definition {
  /** Topic and name: `"joints.coursed-face"`. */
  readonly id: string;
  readonly title: string;
  readonly given: Readonly<Record<string, GivenDefinition>>;
  readonly constants?: Readonly<Record<string, ConstantDefinition>>;
  readonly steps: Readonly<Record<string, StepDefinition>>;
  readonly cautions?: readonly string[];
}

/** A choice by name, for a composed function: a rule, an edition, an orientation. */
export type ChoiceDefinition = {
  readonly oneOf: readonly (string | number | boolean)[];
  readonly says: string;
  /** As for a quantity: inputs with the same word exclude each other. */
  readonly either?: string;
} & ({ readonly default?: undefined; readonly basis?: Basis } | { readonly default: string | number | boolean; readonly basis: Basis });

/** One input of a composed function: a quantity or a choice, which may be left out where it is optional. */
export type EntryDefinition = (GivenDefinition | ChoiceDefinition) & { readonly optional?: true };

/** The inputs of a composed function by name; a calculation's are quantities only. */
export type Entries = Readonly<Record<string, EntryDefinition>>;

/** What one input takes. The second parameter is never used: an editor shows its words where a cursor rests on the input. */
// A condition on it would lose them: only an alias of nothing but another keeps its name.
// eslint-disable-next-line @typescript-eslint/no-unused-vars -- its only use is to be shown
export type Given<Is extends DimensionName, _Says extends string> = Readable<Is>;

// These look at single properties: a comparison with the whole union of definitions costs the compiler two million types.
type GivenOf<E> = E extends { readonly is: infer D extends DimensionName; readonly says: infer Says extends string }
  ? Given<D, Says>
  : E extends { readonly oneOf: readonly (infer One)[] }
    ? One
    : never;
type ReadOf<E> = E extends { readonly is: infer D extends DimensionName } ? Quantity<D> : E extends { readonly oneOf: readonly (infer One)[] } ? One : never;

type KeysNotNeeded<G extends Entries> = {
  [K in keyof G]: G[K] extends { readonly default: string | number | boolean } | { readonly optional: true } ? K : never;
}[keyof G];
type KeysMayBeAbsent<G extends Entries> = { [K in keyof G]: G[K] extends { readonly either: string } | { readonly optional: true } ? K : never }[keyof G];
type KeysInPair<G extends Entries, Word = string> = { [K in keyof G]: G[K] extends { readonly either: infer Own } ? (Own extends Word ? K : never) : never }[keyof G];
type PairWords<G extends Entries> = { [K in keyof G]: G[K] extends { readonly either: infer Word extends string } ? Word : never }[keyof G];

/** Exactly one of the keys of a pair. */
type OneOf<G extends Entries, Keys extends keyof G> = {
  [K in Keys]: { readonly [Only in K]: GivenOf<G[Only]> } & { readonly [Other in Exclude<Keys, K>]?: undefined };
}[Keys];

type AllOf<Union> = (Union extends unknown ? (part: Union) => void : never) extends (part: infer All) => void ? All : never;
type Pairs<G extends Entries> = [PairWords<G>] extends [never] ? unknown : AllOf<{ [W in PairWords<G>]: { readonly pair: OneOf<G, KeysInPair<G, W>> } }[PairWords<G>]>;
type Unwrapped<T> = T extends { readonly pair: infer Inner } ? Inner : T;

/** What is given under each name: a text with its unit, `{ value, unit }` or a quantity; for a choice one of its words. */
export type Inputs<G extends Entries> = { readonly [K in Exclude<keyof G, KeysNotNeeded<G> | KeysInPair<G>>]: GivenOf<G[K]> } & {
  readonly [K in KeysNotNeeded<G>]?: GivenOf<G[K]>;
} & Unwrapped<Pairs<G>>;

/** What was given, read: quantities and choices under their names; absent what was left out and has no default. */
export type ReadInputs<G extends Entries> = { readonly [K in Exclude<keyof G, KeysMayBeAbsent<G>>]: ReadOf<G[K]> } & {
  readonly [K in KeysMayBeAbsent<G>]?: ReadOf<G[K]>;
};

/** What a calculation answers: every step under its own name. */
export type Answers<D extends Definition> = { readonly [K in keyof D["steps"]]: Quantity<D["steps"][K]["is"]> };

/** The words of a formula, split at blanks, brackets and commas. */
type Words<Text extends string> = Text extends `${infer First} ${infer Rest}` ? Parts<First> | Words<Rest> : Parts<Text>;
type Parts<Word extends string> = Word extends `${infer Before}(${infer After}`
  ? Before | Parts<After>
  : Word extends `${infer Before})${string}`
    ? Before
    : Word extends `${infer Before},`
      ? Before
      : Word;

type NamesKnown<D extends Definition> = keyof D["given"] | keyof D["steps"] | (D["constants"] extends object ? keyof D["constants"] : never);
type FormulaWord = FunctionName | `-${FunctionName}` | "pi" | "+" | "-" | "*" | "/" | "^" | "" | "-pi" | `${number}`;
type Unknown<D extends Definition, Text extends string> = Exclude<Words<Text>, NamesKnown<D> | FormulaWord | `-${NamesKnown<D> & string}`>;

type FormulaTexts<S extends StepDefinition> = S["formula"] extends string ? S["formula"] : S["formula"][keyof S["formula"]] & string;

/** What a step must have besides, where its formula names something that is not there: nothing has it, so it fails. */
type CheckedStep<D extends Definition, S extends StepDefinition> = [Unknown<D, FormulaTexts<S>>] extends [never]
  ? unknown
  : { readonly "this name is no input, constant or step": Unknown<D, FormulaTexts<S>> };

type CheckedSteps<D extends Definition> = { readonly [K in keyof D["steps"]]: CheckedStep<D, D["steps"][K]> };

/**
 * Fails to compile where a formula names something that is no input, constant or step. All formulas are looked at together
 * first: step by step, each new name of a step costs the compiler some 1,600 types, since it looks what such a step may hold.
 */
export type Checked<D extends Definition> = {
  readonly steps: [Unknown<D, FormulaTexts<D["steps"][keyof D["steps"]]>>] extends [never] ? unknown : CheckedSteps<D>;
};
