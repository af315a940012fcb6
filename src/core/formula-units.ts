import { exponentNumber } from "./dimensions.js";
import type { Formula } from "./formula.js";
import { noUnits, timesUnits, type UnitProduct } from "./unit-product.js";

/** The units that come out of a formula when its operands are put in with theirs. */
export function productIn(formula: Formula, products: ReadonlyMap<string, UnitProduct>): UnitProduct {
  const at = (part: Formula): UnitProduct => productIn(part, products);
  switch (formula.kind) {
    case "number":
    case "pi":
      return noUnits;
    case "name":
      return products.get(formula.name) ?? noUnits;
    case "negate":
      return at(formula.of);
    // What is added or compared has the same units.
    case "sum":
      return at(formula.left);
    case "product":
      return timesUnits(at(formula.left), at(formula.right), formula.operator === "*" ? 1 : -1);
    case "power":
      return timesUnits(noUnits, at(formula.base), exponentNumber(formula.exponent));
    case "call":
      if (formula.function === "min" || formula.function === "max") return at(formula.of[0] as Formula);
      return formula.function === "sqrt" ? timesUnits(noUnits, at(formula.of[0] as Formula), 0.5) : noUnits;
  }
}

/** Whether an angle stands in a formula only as the whole of what a sine is taken of: there degrees may stand. */
export function onlyInSine(formula: Formula, name: string): boolean {
  const count = (part: Formula, inSine: boolean): boolean => {
    switch (part.kind) {
      case "name":
        return part.name !== name || inSine;
      case "number":
      case "pi":
        return true;
      case "negate":
        return count(part.of, false);
      case "power":
        return count(part.base, false);
      case "call":
        return part.of.every((one) => count(one, part.function === "sin"));
      default:
        return count(part.left, false) && count(part.right, false);
    }
  };
  return count(formula, false);
}
