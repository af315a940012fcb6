import { type Formula, formulaText } from "../core/formula.js";
import type { Solution } from "../core/solution.js";
import { type Conversion, type Figure, figuresText, type Working, workings } from "../core/working.js";
import type { RenderOptions } from "./reading.js";

/** A step as plain lines: what it works out, its formula, the conversions, the numbers put in, what comes out. */
export interface WorkedStep {
  readonly says: string;
  /** Name or symbol of what the step gives. */
  readonly left: string;
  readonly formula: string;
  readonly conversions: readonly string[];
  readonly numbers: string;
  readonly results: readonly string[];
  readonly governedBy?: string;
  readonly differs?: string;
}

/** The steps of a solution as plain lines, for every renderer that writes text. */
export function workedSteps(solution: Solution, options: RenderOptions): readonly WorkedStep[] {
  const symbols = new Map([...solution.given, ...solution.constants, ...solution.steps].map(({ name, symbol }) => [name, symbol]));
  const named = options.formulas === "symbols" ? (name: string): string => symbols.get(name) ?? name : (name: string): string => name;
  return workings(solution, options).map((working) => workedStep(working, named));
}

function workedStep(working: Working, named: (name: string) => string): WorkedStep {
  const { step, conversions, result, shown } = working;
  const results = [`${sign(result)} ${figureText(result)}`];
  if (shown !== undefined) results.push(conversionText(shown));
  return {
    says: step.says,
    left: named(step.name),
    formula: formulaText(step.formula, named),
    conversions: conversions.map((one) => `${named(one.name ?? "")}: ${conversionText(one)}`),
    numbers: isBareName(step.formula) ? "" : figuresText(working),
    results,
    ...(step.governedBy === undefined ? {} : { governedBy: step.governedBy }),
    ...(step.differs === undefined ? {} : { differs: step.differs }),
  };
}

function isBareName({ kind }: Formula): boolean {
  return kind === "name";
}

/** A figure with its unit. */
export function figureText({ number, unit }: Figure): string {
  return unit === "" ? number : `${number} ${unit}`;
}

/** `=` where the figure says all of it, `≈` where digits were left out. */
export function sign({ exact }: Figure): string {
  return exact ? "=" : "≈";
}

function conversionText({ from, operator, factor, to }: Conversion): string {
  const full = from.exact && factor.exact && to.exact;
  return `${figureText(from)} ${operator} ${figureText(factor)} ${full ? "=" : "≈"} ${figureText(to)}`;
}
