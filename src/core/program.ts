import { type Amount, type Arithmetic, exactArithmetic } from "./amount.js";
import type { Formula } from "./formula.js";

/** Where a formula finds the values of its names: a map, or anything that works them out. */
export interface Values<N> {
  readonly get: (name: string) => N | undefined;
}

const operations = { "+": "add", "-": "subtract", "*": "multiply", "/": "divide" } as const;

/**
 * Works out a formula.
 *
 * @param formula - the tree of the formula
 * @param values - the values of the names that stand in it
 * @param arithmetic - the numbers to work it out in
 * @throws NoValue where it has no finite value; Error where a name has no value
 */
export function evaluate<N>(formula: Formula, values: Values<N>, arithmetic: Arithmetic<N>): N {
  switch (formula.kind) {
    case "name": {
      const value = values.get(formula.name);
      if (value === undefined) throw new Error(`"${formula.name}" has no value`);
      return value;
    }
    case "number":
      return arithmetic.literal(formula.digits);
    case "pi":
      return arithmetic.literal("pi");
    case "negate":
      return arithmetic.negate(evaluate(formula.of, values, arithmetic));
    case "power":
      return arithmetic.power(evaluate(formula.base, values, arithmetic), formula.exponent.split(" / ").map(arithmetic.literal).reduce(arithmetic.divide));
    case "call": {
      const [first, ...others] = formula.of.map((part) => evaluate(part, values, arithmetic)) as [N, ...N[]];
      // What takes one argument leaves a second alone.
      const operation: (a: N, b: N) => N = arithmetic[formula.function];
      return others.length === 0 ? operation(first, first) : others.reduce((a, b) => operation(a, b), first);
    }
    default:
      return arithmetic[operations[formula.operator]](evaluate(formula.left, values, arithmetic), evaluate(formula.right, values, arithmetic));
  }
}

/** Of a formula that is a min or a max of names and numbers, the one that won: its amount is the result itself. */
export function governing(formula: Formula, values: Values<Amount>, result: Amount): string | undefined {
  if (formula.kind !== "call" || formula.of.length === 1) return undefined;
  const winner = formula.of.find((part) => evaluate(part, values, exactArithmetic) === result);
  return winner?.kind === "name" ? winner.name : winner?.kind === "number" ? winner.digits : undefined;
}
