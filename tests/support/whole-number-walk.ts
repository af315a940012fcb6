// Formulas worked out a second time in quotients of big whole numbers; nothing of the engine's arithmetic or units.
import type { Definition } from "../../src/core/index.js";
import { type Formula, parseFormula } from "../../src/core/index.js";

type Ratio = readonly [above: bigint, below: bigint];

/** What units are in inches, ounces, or nothing, as the definitions of the units say: 231 in3 to the gallon. */
const sizes: Readonly<Record<string, Ratio>> = {
  ratio: [1n, 1n], count: [1n, 1n], "%": [1n, 100n], mil: [1n, 1000n], in: [1n, 1n], ft: [12n, 1n], in2: [1n, 1n], ft2: [144n, 1n], ft3: [1728n, 1n], gal: [231n, 1n], qt: [231n, 4n],
  lb: [16n, 1n], "lb/ft2": [16n, 144n],
};

const sizeOf = (unit: string): Ratio => {
  const size = sizes[unit];
  if (size === undefined) throw new Error(`no size for ${unit}`);
  return size;
};

function decimal(text: string): Ratio {
  const [, digits = "", places = "", exponent = "0"] = /^(\d+)(?:\.(\d+))?(?:e([-+]?\d+))?$/.exec(text) ?? [];
  const power = Number(exponent) - places.length;
  return power < 0 ? [BigInt(digits + places), 10n ** BigInt(-power)] : [BigInt(digits + places) * 10n ** BigInt(power), 1n];
}

const times = ([a, b]: Ratio, [c, d]: Ratio): Ratio => [a * c, b * d];
const over = ([a, b]: Ratio, [c, d]: Ratio): Ratio => (c < 0n ? [-a * d, b * -c] : [a * d, b * c]);

function ceil([above, below]: Ratio): bigint {
  const quotient = above / below;
  return quotient * below < above ? quotient + 1n : quotient;
}

/** A definition's steps, made ready; rows are numbers in the units of the definition. */
export function walkOf(definition: Definition): (row: Readonly<Record<string, number>>) => ReadonlyMap<string, Ratio> {
  const unitOf = ({ is, unit = is }: { readonly is: string; readonly unit?: string | readonly string[] }): string => [unit].flat()[0] ?? is;
  const given = Object.entries(definition.given).map(([name, row]) => [name, sizeOf(unitOf(row))] as const);
  const constants = Object.entries(definition.constants ?? {}).map(([name, { value }]) => {
    const [number = "", unit = "ratio"] = String(value).split(" ");
    return [name, times(decimal(number), sizeOf(unit))] as const;
  });
  const steps = Object.entries(definition.steps).map(([name, { formula }]) => [name, parseFormula(formula as string)] as const);
  return (row) => {
    const known = new Map<string, Ratio>(constants);
    for (const [name, size] of given) known.set(name, times(decimal(String(row[name])), size));
    for (const [name, formula] of steps) known.set(name, walk(formula, known));
    return known;
  };
}

function walk(formula: Formula, known: ReadonlyMap<string, Ratio>): Ratio {
  switch (formula.kind) {
    case "number":
      return decimal(formula.digits);
    case "name":
      return known.get(formula.name) as Ratio;
    case "sum": {
      const [[a, b], [c, d]] = [walk(formula.left, known), walk(formula.right, known)];
      return formula.operator === "+" ? [a * d + c * b, b * d] : [a * d - c * b, b * d];
    }
    case "product":
      return (formula.operator === "*" ? times : over)(walk(formula.left, known), walk(formula.right, known));
    case "call":
      if (formula.function === "ceil") return [ceil(walk(formula.of[0] as Formula, known)), 1n];
      throw new Error(formula.function);
    default:
      throw new Error(formula.kind);
  }
}
