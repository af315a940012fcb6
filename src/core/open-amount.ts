import { type Amount, type Arithmetic, exactArithmetic } from "./amount.js";
import type { Limited } from "./limits.js";

/** The operations that are done on amounts outside of formulas. */
export type AmountArithmetic = Pick<Arithmetic<Amount>, "add" | "subtract" | "multiply" | "divide" | "floor" | "compare">;

/**
 * An amount that stands open, such as that of a column, which differs from row to row. What is done with it is done by an
 * arithmetic of its own. It has no digits: whatever asks for them fails, and so takes it for no number by mistake.
 */
export abstract class OpenAmount {
  constructor(readonly arithmetic: AmountArithmetic) {}

  /** Sees to it that it keeps the limits of an input; whether it does, as far as it is known. */
  abstract keeps(row: Limited): boolean;
}

/** Whether an amount stands open. */
export function isOpen(amount: unknown): amount is OpenAmount {
  return amount instanceof OpenAmount;
}

function arithmeticFor(a: unknown, b: unknown = a): AmountArithmetic {
  return isOpen(a) ? a.arithmetic : isOpen(b) ? b.arithmetic : exactArithmetic;
}

/** Exact arithmetic that goes on with amounts that stand open. */
export const amountArithmetic: AmountArithmetic = {
  add: (a, b) => arithmeticFor(a, b).add(a, b),
  subtract: (a, b) => arithmeticFor(a, b).subtract(a, b),
  multiply: (a, b) => arithmeticFor(a, b).multiply(a, b),
  divide: (a, b) => arithmeticFor(a, b).divide(a, b),
  floor: (a) => arithmeticFor(a).floor(a),
  compare: (a, b) => arithmeticFor(a, b).compare(a, b),
};
