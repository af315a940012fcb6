// Every formula of every calculation: its dimensions are checked, and mathjs runs its text with units of its own on random
// inputs within the limits. What mathjs finds, value and unit, must be what the engine gives.
import { Decimal } from "decimal.js";
import { all, type BigNumber, create, type Unit } from "mathjs";
import { describe, expect, it } from "vitest";
import { toDecimal } from "../../src/core/amount.js";
import { choicesOf, formulasFor } from "../../src/core/prepared.js";
import { checkDimension, dimensions, type DimensionName } from "../../src/core/dimensions.js";
import { formulaText, namesIn } from "../../src/core/formula.js";
import { amountOf, isQuantity, type Quantity } from "../../src/core/quantity.js";
import type { Line, Solution } from "../../src/core/solution.js";
import { mathjsText } from "../support/formulas.js";
import { allCalculations, type FoundCalculation } from "../support/modules.js";
import { drawInputs } from "../support/random-inputs.js";
import { drawFrom } from "../support/random.js";

const math = create(all!, { number: "BigNumber", precision: 64 });
math.createUnit("dollar");
math.createUnit("person");
const bases = ["m", "kg", "s", "K", "dollar", "person"];

/** The base units of a dimension as mathjs writes them; empty for a bare number. */
function unitText(dimension: DimensionName): string {
  return dimensions[dimension].flatMap((power, index) => (power === 0 ? [] : [`${bases[index] ?? ""}^${String(power)}`])).join(" ");
}

function inMathjs(value: Quantity): BigNumber | Unit {
  const [number, unit] = [math.bignumber(toDecimal(amountOf(value)).toString()), unitText(value.dimension)];
  return unit === "" ? number : math.unit(number, unit);
}

/** The number in base units of what mathjs found; it throws where the unit is another. */
function numberOf(found: unknown, dimension: DimensionName): Decimal {
  const unit = unitText(dimension);
  const number = unit === "" ? (found as BigNumber) : ((found as Unit).toNumeric(unit) as BigNumber);
  if (!math.isBigNumber(number)) throw new TypeError(`${String(found)} is no ${dimension}`);
  return new Decimal(number.toString());
}

/** What stands behind each name when a step is worked out. */
function scopeOf({ given, constants, steps }: Solution): Readonly<Record<string, BigNumber | Unit>> {
  const lines: readonly Line[] = [...given, ...constants, ...steps];
  return Object.fromEntries(lines.flatMap(({ name, value }) => (isQuantity(value) ? [[name, inMathjs(value)]] : [])));
}

const enough = 12;
const calculations = await allCalculations();

it("there are calculations to check", () => {
  expect(calculations.length).toBeGreaterThan(50);
});

/** Solutions for random inputs; those that a limit of a step refuses are left out. */
function solutions({ run, definition }: FoundCalculation, chosen: readonly string[]): readonly Solution[] {
  const draw = drawFrom(Array.from(definition.id).reduce((seed, letter) => seed * 31 + (letter.codePointAt(0) ?? 0), 7));
  const found: Solution[] = [];
  const refused = new Map<string, number>();
  for (let tries = 0; tries < 4000 && found.length < enough; tries += 1) {
    const tried = run.try(drawInputs(definition, chosen, draw));
    if (tried.ok) found.push(tried.solution);
    else for (const { message } of tried.problems) refused.set(message, tries);
  }
  if (found.length < enough) throw new Error(`${definition.id}: only ${String(found.length)} random inputs have an answer: ${[...refused.keys()].slice(-3).join("; ")}`);
  return found;
}

describe.each(calculations.map((found) => [found.definition.id, found] as const))("%s", (_id, found) => {
  const { definition } = found;

  it("gives what it is declared to give", () => {
    for (const chosen of choicesOf(definition)) {
      const given = Object.entries(definition.given).filter(([name, { either }]) => either === undefined || chosen.includes(name));
      const names = new Map<string, DimensionName>([...given, ...Object.entries(definition.constants ?? {})].map(([name, { is }]) => [name, is]));
      for (const { name, formula } of formulasFor(definition, chosen)) {
        const is = definition.steps[name]?.is ?? "ratio";
        checkDimension(formula, is, names);
        names.set(name, is);
      }
    }
  });

  it("has no input, constant or formula that nothing asks for", () => {
    const asked = new Set(choicesOf(definition).flatMap((chosen) => formulasFor(definition, chosen).flatMap(({ formula }) => namesIn(formula))));
    expect([...Object.keys(definition.given), ...Object.keys(definition.constants ?? {})].filter((name) => !asked.has(name))).toEqual([]);
    const inPairs = new Set(choicesOf(definition).flat());
    const keys = Object.values(definition.steps).flatMap(({ formula }) => (typeof formula === "string" ? [] : Object.keys(formula)));
    expect(keys.filter((key) => !inPairs.has(key))).toEqual([]);
  });

  it("gives what mathjs gives", () => {
    for (const chosen of choicesOf(definition)) {
      for (const solution of solutions(found, chosen)) {
        const scope = scopeOf(solution);
        for (const { name, formula, value } of solution.steps) {
          const text = mathjsText(formulaText(formula));
          const theirs = numberOf(math.evaluate(text, { ...scope }), value.dimension);
          const ours = new Decimal(toDecimal(amountOf(value)).toString());
          expect(theirs.minus(ours).abs().toNumber(), `${name}: ${text} with ${solution.given.map((line) => `${line.name} ${String(line.value)}`).join(", ")}: ${ours.toString()} and ${theirs.toString()}`).toBeLessThanOrEqual(ours.isZero() ? 1e-30 : ours.abs().toNumber() * 1e-20);
        }
      }
    }
  });
});
