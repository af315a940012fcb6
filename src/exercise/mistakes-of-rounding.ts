import { type Amount, exactArithmetic as arithmetic } from "../core/amount.js";
import type { Formula } from "../core/formula.js";
import type { Solution } from "../core/solution.js";
import { unitScale } from "../core/unit-scale.js";
import type { Slip } from "./mistake.js";

/** Results rounded before the next step goes on with them; counts rounded up twice, to the nearest, or the wrong way. */
export function changesOfRounding({ steps }: Solution, asked: string): readonly Slip[] {
  const units = new Map(steps.map(({ name, value }) => [name, value]));
  const rounded = (places: Amount, only?: (name: string) => boolean, way: "round" | "ceil" = "round") => (name: string, amount: Amount): Amount => {
    const value = units.get(name);
    if (name === asked || value === undefined || value.dimension === "temperature" || only?.(name) === false) return amount;
    const one = arithmetic.divide(unitScale(value.unit).size, places);
    const found = arithmetic.multiply(arithmetic[way](arithmetic.divide(amount, one)), one);
    // Nobody goes on with nought.
    return arithmetic.compare(found, arithmetic.literal("0")) === 0 ? amount : found;
  };
  const isCount = (name: string): boolean => units.get(name)?.dimension === "count";
  const formulas = steps.map(({ formula }) => formula);
  const early: readonly Slip[] = [
    { kind: "roundedEarly", says: "results on the way rounded to whole numbers", change: { result: rounded(arithmetic.literal("1")) } },
    { kind: "roundedEarly", says: "results on the way rounded to one place", change: { result: rounded(arithmetic.literal("10")) } },
    { kind: "roundedUpTwice", says: "pieces rounded up on the way, and again at the end", change: { result: rounded(arithmetic.literal("1"), isCount, "ceil") } },
  ];
  const nearest: Slip = { kind: "roundedToNearest", says: "rounded to the nearest whole number", change: { arithmetic: { ...arithmetic, ceil: arithmetic.round, floor: arithmetic.round } } };
  const wrongWay: Slip = { kind: "roundedTheWrongWay", says: "rounded down for up, or up for down", change: { arithmetic: { ...arithmetic, ceil: arithmetic.floor, floor: arithmetic.ceil } } };
  return [...early, ...(formulas.some((formula) => calls(formula, ["ceil", "floor"])) ? [nearest, wrongWay] : [])];
}

/** Whether a formula calls one of some functions. */
export function calls(formula: Formula, functions: readonly string[]): boolean {
  switch (formula.kind) {
    case "call":
      return functions.includes(formula.function) || formula.of.some((part) => calls(part, functions));
    case "negate":
      return calls(formula.of, functions);
    case "power":
      return calls(formula.base, functions);
    case "sum":
    case "product":
      return calls(formula.left, functions) || calls(formula.right, functions);
    default:
      return false;
  }
}
