import { deepFrozen } from "./frozen.js";

/** The functions a formula may call. `ln` and `log10`, never `log`. */
export const functionNames = ["min", "max", "ceil", "floor", "round", "sqrt", "ln", "log10", "exp", "sin", "asin"] as const;

/** The name of a function that a formula may call. */
export type FunctionName = (typeof functionNames)[number];

/** A formula as a tree. The grammar is closed: numbers, names, `+ - * / ^`, brackets, `pi` and the functions above. */
export type Formula =
  | { readonly kind: "number"; readonly digits: string }
  | { readonly kind: "pi" }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "negate"; readonly of: Formula }
  | { readonly kind: "sum"; readonly operator: "+" | "-"; readonly left: Formula; readonly right: Formula }
  | { readonly kind: "product"; readonly operator: "*" | "/"; readonly left: Formula; readonly right: Formula }
  | { readonly kind: "power"; readonly base: Formula; readonly exponent: string }
  | { readonly kind: "call"; readonly function: FunctionName; readonly of: readonly Formula[] };

/** A formula that cannot be read; the message names the place. */
export class FormulaError extends Error {}

/** Numbers, names, signs; what is none of these runs to the end, and is refused where it is met. */
const token = /\d+(\.\d+)?|[a-z][a-z0-9]*|[-+*/^(),]|\S.*/gi;

/**
 * Reads a formula's text into its tree.
 *
 * @throws FormulaError where the text is no formula of this grammar
 * @example
 * ```ts
 * parseFormula("area * depth").kind; // "product"
 * ```
 */
export function parseFormula(text: string): Formula {
  const tokens = text.match(token) ?? [];
  let next = 0;
  const fail = (): never => {
    const here = tokens[next];
    throw new FormulaError(`"${text}": unexpected ${here === undefined ? "end" : `"${here}"`}`);
  };
  /** Takes the next token where it is one of these signs. */
  const taken = (signs: string): string | undefined => (signs.includes(tokens[next] ?? "none") ? tokens[next++] : undefined);
  const close = (): string => taken(")") ?? fail();
  const number = (): string => (/^\d/.test(tokens[next] ?? "") ? (tokens[next++] as string) : fail());

  function sum(): Formula {
    let left = product();
    for (let sign = taken("+-"); sign !== undefined; sign = taken("+-")) left = { kind: "sum", operator: sign as "+" | "-", left, right: product() };
    return left;
  }
  function product(): Formula {
    let left = signed();
    for (let sign = taken("*/"); sign !== undefined; sign = taken("*/")) left = { kind: "product", operator: sign as "*" | "/", left, right: signed() };
    return left;
  }
  function signed(): Formula {
    if (taken("-") !== undefined) return { kind: "negate", of: signed() };
    const base = single();
    return taken("^") === undefined ? base : { kind: "power", base, exponent: exponent() };
  }
  /** A literal, as `2`, `0.18`, `(-2)` or `(2 / 9.5)`. */
  function exponent(): string {
    if (taken("(") === undefined) return number();
    let written = (taken("-") ?? "") + number();
    if (taken("/") !== undefined) {
      if (Number(tokens[next]) === 0) fail();
      written += ` / ${number()}`;
    }
    close();
    return written;
  }
  function single(): Formula {
    const here = tokens[next] ?? "";
    if (taken("(") !== undefined) {
      const inner = sum();
      close();
      return inner;
    }
    if (!/^[a-z]/i.test(here)) return { kind: "number", digits: number() };
    if (tokens[next + 1] !== "(") {
      next += 1;
      return here === "pi" ? { kind: "pi" } : { kind: "name", name: here };
    }
    const name = functionNames.find((known) => known === here) ?? fail();
    next += 2;
    const several = name === "min" || name === "max";
    const of = [sum()];
    while (several && taken(",") !== undefined) of.push(sum());
    if (several && of.length === 1) fail();
    close();
    return { kind: "call", function: name, of };
  }

  const formula = sum();
  return next < tokens.length ? fail() : deepFrozen(formula);
}

/** How strongly a part binds; a part in a place that binds more strongly needs brackets. */
const strength = { sum: 1, product: 2, negate: 3, power: 4 } as const;

function strengthOf(formula: Formula): number {
  return formula.kind in strength ? strength[formula.kind as keyof typeof strength] : 5;
}

/**
 * Writes a tree as the text that reads back into it, with no more brackets than it needs.
 *
 * @param formula - the tree
 * @param leaf - how a name is written, and whether it is raised to a power; by itself unless told otherwise
 * @example
 * ```ts
 * formulaText(parseFormula("(area*depth) / (1-share)")); // "area * depth / (1 - share)"
 * ```
 */
export function formulaText(formula: Formula, leaf: (name: string, raised: boolean) => string = (name) => name): string {
  const write = (part: Formula, place = 0): string => {
    if (part.kind === "name") return leaf(part.name, place === 5);
    const text = bare(part);
    return strengthOf(part) < place ? `(${text})` : text;
  };
  const bare = (part: Exclude<Formula, { readonly kind: "name" }>): string => {
    switch (part.kind) {
      case "number":
        return part.digits;
      case "pi":
        return "pi";
      case "negate":
        return `-${write(part.of, strength.negate)}`;
      case "sum":
        return `${write(part.left, strength.sum)} ${part.operator} ${write(part.right, strength.product)}`;
      case "product":
        return `${write(part.left, strength.product)} ${part.operator} ${write(part.right, strength.negate)}`;
      case "power":
        return `${write(part.base, 5)} ^ ${/^[\d.]+$/.test(part.exponent) ? part.exponent : `(${part.exponent})`}`;
      case "call":
        return `${part.function}(${part.of.map((argument) => write(argument)).join(", ")})`;
    }
  };
  return write(formula);
}

/** Every name that stands in a formula, in the order in which it is met, each once. */
export function namesIn(formula: Formula): readonly string[] {
  switch (formula.kind) {
    case "number":
    case "pi":
      return [];
    case "name":
      return [formula.name];
    case "negate":
      return namesIn(formula.of);
    case "power":
      return namesIn(formula.base);
    case "call":
      return [...new Set(formula.of.flatMap(namesIn))];
    default:
      return [...new Set([...namesIn(formula.left), ...namesIn(formula.right)])];
  }
}
