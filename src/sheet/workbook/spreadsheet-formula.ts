import type { Formula, FunctionName } from "../../core/formula.js";

/** How strongly a part binds in a spreadsheet: there a minus sign binds before a power, so that `-a ^ 2` is (-a)². */
const strength = { sum: 1, product: 2, power: 3, negate: 4 } as const;

function strengthOf(formula: Formula): number {
  return formula.kind in strength ? strength[formula.kind as keyof typeof strength] : 5;
}

/**
 * What binary arithmetic may miss a number by, in a formula: a millionth of a millionth of it, and as much again for what
 * is near nought. A whole number that it misses is so taken as that number, and a sheet counts as we do with fractions.
 */
const slack = (inner: string): string => `(1 + ABS(${inner})) * 1E-12`;

/** How each function is written. */
const calls: Readonly<Record<FunctionName, (...inner: string[]) => string>> = {
  min: (...inner) => `MIN(${inner.join(", ")})`,
  max: (...inner) => `MAX(${inner.join(", ")})`,
  ceil: (inner = "") => `CEILING(${inner} - ${slack(inner)}, 1)`,
  floor: (inner = "") => `INT(${inner} + ${slack(inner)})`,
  // Halves go away from nought, and so does the factor.
  round: (inner = "") => `ROUND((${inner}) * (1 + 1E-12), 0)`,
  sqrt: (inner = "") => `SQRT(${inner})`,
  ln: (inner = "") => `LN(${inner})`,
  log10: (inner = "") => `LOG10(${inner})`,
  exp: (inner = "") => `EXP(${inner})`,
  sin: (inner = "") => `SIN(${inner})`,
  // A sine of exactly 1 that comes out a last digit above it has no arcsine.
  asin: (inner = "") => `ASIN(IF(ABS(${inner}) > 1, ROUND(${inner}, 12), ${inner}))`,
};

/**
 * Writes a formula as a spreadsheet reads it, with brackets by its own rules and every round-up guarded against the
 * last digits of binary numbers. What comes out is worked out in base units, like the formula itself.
 *
 * @param formula - the tree
 * @param nameOf - the cell or the defined name that stands for each name; the name itself unless told otherwise
 * @example
 * ```ts
 * spreadsheetFormula(parseFormula("ceil(area / cover) - a ^ 2")); // "CEILING(area / cover - (1 + ABS(area / cover)) * 1E-12, 1) - a ^ 2"
 * spreadsheetFormula(parseFormula("-a ^ 2")); // "-(a ^ 2)"
 * ```
 */
export function spreadsheetFormula(formula: Formula, nameOf: (name: string) => string = (name) => name): string {
  const write = (part: Formula, place = 0): string => {
    const text = bare(part);
    return strengthOf(part) < place ? `(${text})` : text;
  };
  const bare = (part: Formula): string => {
    switch (part.kind) {
      case "number":
        return part.digits;
      case "pi":
        return "PI()";
      case "name":
        return nameOf(part.name);
      case "negate":
        return `-${write(part.of, 5)}`;
      case "sum":
        return `${write(part.left, strength.sum)} ${part.operator} ${write(part.right, strength.product)}`;
      case "product":
        return `${write(part.left, strength.product)} ${part.operator} ${write(part.right, strength.power)}`;
      case "power":
        return `${write(part.base, 5)} ^ ${/^[\d.]+$/.test(part.exponent) ? part.exponent : `(${part.exponent})`}`;
      case "call":
        return calls[part.function](...part.of.map((argument) => write(argument)));
    }
  };
  return write(formula);
}

/** Whether a formula gives a whole number, so that it is shown without places. */
export function isWhole(formula: Formula): boolean {
  return formula.kind === "call" && ["ceil", "floor", "round"].includes(formula.function);
}
