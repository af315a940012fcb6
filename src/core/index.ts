/**
 * The engine: quantities, formulas, calculations. It knows nothing of masonry, and a calculation of your own made with
 * it has every guarantee of ours.
 *
 * @packageDocumentation
 */
export { type Basis, basisText } from "./basis.js";
export { type Calculation, calculation } from "./calculation.js";
export type { AnyCallable, Callable } from "./callable.js";
export { type Composed, composed, type ComposedFrom, type Work } from "./composed.js";
export type {
  Answers, Checked, ChoiceDefinition, ConstantDefinition, Definition, Entries, EntryDefinition, Given, GivenDefinition, Inputs, LimitText,
  ReadInputs, StepDefinition,
} from "./definition.js";
export { type DimensionName, dimensions, type Powers } from "./dimensions.js";
export { type Formula, formulaText, type FunctionName, parseFormula } from "./formula.js";
export { InputError, type Path, pathText, type Problem, type ProblemCode, problemText, type Trouble } from "./problems.js";
export { isQuantity, type Quantity, type QuantityJson } from "./quantity.js";
export { compare, isNought, subtract, sum, times } from "./quantity-arithmetic.js";
export { quantity, type QuantityText, type Readable } from "./read-quantity.js";
export type { Attempt, Line, Solution, Step } from "./solution.js";
export type { StandardIssue, StandardResult, StandardSchema } from "./standard-schema.js";
export { type SpellingOf, type System, type UnitCode, type UnitOf, units, unitsOf, unitSymbol } from "./units.js";
export { english, type NoValueReason, type Wanted, type Wording } from "./wording.js";
export { type Writing, type Written, writeQuantity } from "./write-quantity.js";
