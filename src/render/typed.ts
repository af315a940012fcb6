import { formulaText } from "../core/formula.js";
import { type Conversion, type Figure, figuresText } from "../core/working.js";
import type { Cell, Steps, SymbolText, WorkedStep } from "./section.js";

/** A cell as plain characters. */
export function cellText(cell: Cell): string {
  return cell.map((one) => (typeof one === "string" ? one : "symbol" in one ? one.symbol : figureText(one))).join("");
}

/** A figure with its unit. */
export function figureText({ number, unit }: Figure): string {
  return [number, unit].filter((one) => one !== "").join(" ");
}

/** `=` where the figure says all of it, `≈` where digits were left out. */
export function sign({ exact }: Pick<Figure, "exact">): "=" | "≈" {
  return exact ? "=" : "≈";
}

/** Whether nothing was left out anywhere in a conversion. */
export function conversionSign({ from, factor, to }: Conversion): "=" | "≈" {
  return sign({ exact: from.exact && factor.exact && to.exact });
}

/** Words after a step's own: what governed, where it departs from its source. */
export function stepNotes({ governedBy, differs }: WorkedStep): readonly string[] {
  return [...(governedBy === undefined ? [] : [`governed by ${governedBy}`]), ...(differs === undefined ? [] : [`note: ${differs}`])];
}

/** What a step works out, with the number of its source. */
export function stepTitle({ says, source }: WorkedStep): string {
  return source === undefined ? says : `${says} [${String(source)}]`;
}

/** A step as lines typed in plain characters: conversions, formula, numbers, result; for each system of units that is shown. */
export function typedLines(step: WorkedStep, { named, blank }: Steps): readonly string[] {
  const write = (name: string): string => nameText(named(name));
  const left = write(step.name);
  const pad = " ".repeat(left.length);
  if (blank) return step.ways.flatMap(({ title, working: { result, shown } }) => [...titled(title), `${left} = ${line}`, `${pad} = ${line}`, `${pad} = ${figureText({ ...(shown?.to ?? result), number: "_".repeat(16) })}`]);
  return step.ways.flatMap(({ title, working }, index) => {
    const { conversions, result, shown } = working;
    return [
      ...titled(title),
      ...conversions.map((one) => `${write(one.name ?? "")}: ${conversionText(one)}`),
      ...(index === 0 ? [`${left} = ${formulaText(step.formula, write)}`] : []),
      ...(step.formula.kind === "name" ? [] : [`${index === 0 ? pad : left} = ${figuresText(working)}`]),
      `${index === 0 || step.formula.kind !== "name" ? pad : left} ${sign(result)} ${figureText(result)}`,
      ...(shown === undefined ? [] : [conversionText(shown)]),
    ];
  });
}

const line = "_".repeat(40);

function titled(title: string): readonly string[] {
  return title === "" ? [] : [`${title}:`];
}

function nameText(name: string | SymbolText): string {
  return typeof name === "string" ? name : name.symbol;
}

function conversionText(conversion: Conversion): string {
  const { from, operator, factor, to } = conversion;
  return `${figureText(from)} ${operator} ${figureText(factor)} ${conversionSign(conversion)} ${figureText(to)}`;
}
