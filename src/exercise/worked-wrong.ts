import { type Amount, type Arithmetic, exactArithmetic, NoValue } from "../core/amount.js";
import { evaluate } from "../core/program.js";
import { amountOf, isQuantity } from "../core/quantity.js";
import type { Solution } from "../core/solution.js";

/** How the same formulas are worked another way; what is not said stays as it is. */
export interface Change {
  /** Another amount for an input. */
  readonly inputs?: ReadonlyMap<string, Amount>;
  /** Another amount for a name as it stands in the formula of one step. */
  readonly operand?: { readonly step: string; readonly name: string; readonly amount: (amount: Amount) => Amount };
  /** What is made of the result of a step before the next goes on with it. */
  readonly result?: (step: string, amount: Amount) => Amount;
  readonly arithmetic?: Arithmetic<Amount>;
}

/** What the formulas of a solution give with a change; nothing where it has no finite value. */
export function workedWrong({ given, constants, steps }: Solution, asked: string, { inputs, operand, result, arithmetic = exactArithmetic }: Change): Amount | undefined {
  const amounts = new Map<string, Amount>();
  for (const { name, value } of [...given, ...constants]) if (isQuantity(value)) amounts.set(name, inputs?.get(name) ?? amountOf(value));
  try {
    for (const { name, formula } of steps) {
      const get = (of: string): Amount | undefined => {
        const amount = amounts.get(of);
        return amount !== undefined && operand?.step === name && operand.name === of ? operand.amount(amount) : amount;
      };
      const amount = evaluate(formula, { get }, arithmetic);
      amounts.set(name, result?.(name, amount) ?? amount);
    }
  } catch (error) {
    if (error instanceof NoValue) return undefined;
    throw error;
  }
  return amounts.get(asked);
}
