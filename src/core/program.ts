import { type Amount, type Arithmetic, exactArithmetic } from "./amount.js";
import type { Formula } from "./formula.js";

/** Where a formula finds the values of its names: a map, or anything that works them out. */
export interface Values<N> {
  readonly get: (name: string) => N | undefined;
}

/** A formula made ready: it works itself out from where its values are. */
type Run<N, From> = (from: From) => N;

const operations = { "+": "add", "-": "subtract", "*": "multiply", "/": "divide" } as const;

/**
 * Makes a formula ready to be worked out often.
 *
 * @param formula - the tree of the formula
 * @param valueOf - how the value of a name is found
 * @param arithmetic - the numbers to work it out in
 * @returns a function that throws NoValue where the formula has no finite value
 */
export function readyFormula<N, From>(formula: Formula, valueOf: (name: string) => Run<N, From>, arithmetic: Arithmetic<N>): Run<N, From> {
  const ready = (part: Formula): Run<N, From> => readyFormula(part, valueOf, arithmetic);
  switch (formula.kind) {
    case "name":
      return valueOf(formula.name);
    case "number":
    case "pi": {
      const number = arithmetic.literal(formula.kind === "pi" ? "pi" : formula.digits);
      return () => number;
    }
    case "negate": {
      const of = ready(formula.of);
      return (from) => arithmetic.negate(of(from));
    }
    case "power": {
      const base = ready(formula.base);
      const exponent = formula.exponent.split(" / ").map(arithmetic.literal).reduce(arithmetic.divide);
      return (from) => arithmetic.power(base(from), exponent);
    }
    case "call": {
      const [first, ...others] = formula.of.map(ready) as [Run<N, From>, ...Run<N, From>[]];
      // What takes one argument leaves a second alone.
      const operation: (a: N, b: N) => N = arithmetic[formula.function];
      if (others.length > 0) return (from) => others.reduce((so, other) => operation(so, other(from)), first(from));
      return (from) => {
        const of = first(from);
        return operation(of, of);
      };
    }
    default: {
      const [left, right] = [ready(formula.left), ready(formula.right)];
      const operation = arithmetic[operations[formula.operator]];
      return (from) => operation(left(from), right(from));
    }
  }
}

/**
 * Works out a formula once.
 *
 * @throws NoValue where it has no finite value; Error where a name has no value
 */
export function evaluate<N>(formula: Formula, values: Values<N>, arithmetic: Arithmetic<N>): N {
  return readyFormula<N, undefined>(formula, (name) => () => values.get(name) ?? valueless(name), arithmetic)(undefined);
}

/** Says that a name has no value; a definition that was checked has none. */
export function valueless(name: string): never {
  throw new Error(`"${name}" has no value`);
}

/** Of a formula that is a min or a max of names and numbers, the one that won: its amount is the result itself. */
export function governing(formula: Formula, values: Values<Amount>, result: Amount): string | undefined {
  if (formula.kind !== "call" || formula.of.length === 1) return undefined;
  for (const part of formula.of) {
    if (part.kind === "name" && values.get(part.name) === result) return part.name;
    if (part.kind === "number" && exactArithmetic.literal(part.digits) === result) return part.digits;
  }
  return undefined;
}
