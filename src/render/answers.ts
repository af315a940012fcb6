import { spaced } from "../core/calculation.js";
import { isQuantity, type Quantity } from "../core/quantity.js";
import type { Line, Solution } from "../core/solution.js";
import { type UnitCode, unitSystem } from "../core/units.js";
import { unitFor, unitsIn, writeQuantity } from "../core/write-quantity.js";
import type { RenderOptions } from "./reading.js";

/** One answer: what it is, and how it reads. */
export interface AnswerRow {
  readonly name: string;
  readonly text: string;
}

/** A list of records among the answers, as a table. */
export interface AnswerTable {
  readonly name: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** The answers of a solution as rows and tables. */
export interface ToldAnswers {
  readonly rows: readonly AnswerRow[];
  readonly tables: readonly AnswerTable[];
}

/** Throws where a renderer is given something that is no solution. */
export function checkSolution(solution: unknown): asserts solution is Solution {
  const known = typeof solution === "object" && solution !== null && "answers" in solution && "steps" in solution && "parts" in solution;
  if (!known) throw new TypeError("a renderer takes a solution: what .solve gives, not the answers or the input");
}

/** A quantity as the reader wants it: in his units, a length in inches with a fraction as the tape shows it. */
export function quantityText(quantity: Quantity, shown: readonly UnitCode[], { units, digits = 6 }: RenderOptions): string {
  const unit = unitFor(shown.length > 0 ? shown : alike(quantity, units), units, quantity.unit);
  const decimal = writeQuantity(quantity, { unit, digits });
  if (unit !== "in") return decimal.text;
  const tape = writeQuantity(quantity, { as: "tape", tapeParts: 64 });
  return tape.exact && tape.text !== decimal.text ? tape.text : decimal.text;
}

/** Where nothing says in which unit of the other system a value is shown: one of the nearest size. */
function alike({ dimension, unit }: Quantity, units: RenderOptions["units"]): readonly UnitCode[] {
  if (units === undefined || unitSystem(unit) === units || unitSystem(unit) === "both") return [unit];
  const counterpart: Partial<Record<UnitCode, UnitCode>> = {
    mil: "um", in: "mm", ft: "m", yd: "m", in2: "mm2", ft2: "m2", in3: "cm3", ft3: "L", yd3: "m3", gal: "L", qt: "L", lb: "kg", oz: "g", ton: "t", degF: "degC",
    degFDifference: "degCDifference", lbf: "N", psf: "Pa", psi: "kPa", mph: "km/h", "lb/ft3": "kg/m3", "lb/ft2": "kg/m2", "ft2/gal": "m2/L",
    um: "mil", mm: "in", m: "ft", m2: "ft2", L: "gal", m3: "yd3", kg: "lb", g: "oz", degC: "degF", N: "lbf", Pa: "psf", "kg/m3": "lb/ft3", "kg/m2": "lb/ft2",
  };
  const other = counterpart[unit] ?? unitsIn(dimension, units)[0];
  return other === undefined ? [unit] : [other];
}

/** A line's value as text. */
export function lineText({ value, shown }: Line, options: RenderOptions): string {
  return typeof value === "object" ? quantityText(value, shown, options) : wordText(value);
}

function wordText(value: string | number | boolean): string {
  return typeof value === "boolean" ? (value ? "yes" : "no") : String(value);
}

/** The answers as rows and tables; a step's answer is told with what the step says. */
export function toldAnswers(solution: Solution, options: RenderOptions): ToldAnswers {
  const rows: AnswerRow[] = [];
  const tables: AnswerTable[] = [];
  if (solution.steps.length > 0) {
    for (const step of solution.steps) rows.push({ name: step.says, text: lineText(step, options) + (step.governedBy === undefined ? "" : ` (governed by ${step.governedBy})`) });
    return { rows, tables };
  }
  if (typeof solution.answers !== "object" || solution.answers === null) return { rows, tables };
  for (const [name, value] of Object.entries(solution.answers as Readonly<Record<string, unknown>>)) {
    const text = cell(value, options);
    if (text !== undefined) rows.push({ name: spaced(name), text });
    else if (Array.isArray(value)) tables.push(table(name, value, options));
    else if (typeof value === "object" && value !== null) rows.push(...nestedRows(spaced(name), value, options));
  }
  return { rows, tables: tables.filter((one) => one.rows.length > 0) };
}

function nestedRows(name: string, value: object, options: RenderOptions): readonly AnswerRow[] {
  return Object.entries(value).flatMap(([key, inner]): AnswerRow[] => {
    const text = cell(inner, options);
    return text === undefined ? [] : [{ name: `${name}, ${spaced(key)}`, text }];
  });
}

/** What fits into one cell: a quantity, a word, a number, a yes or no, a short list of those; nothing else. */
function cell(value: unknown, options: RenderOptions): string | undefined {
  if (isQuantity(value)) return quantityText(value, [], options);
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return wordText(value);
  if (!Array.isArray(value) || value.length === 0) return undefined;
  const cells = value.map((one) => (Array.isArray(one) ? undefined : cell(one, options)));
  return cells.every((one) => one !== undefined) ? cells.join(", ") : undefined;
}

function table(name: string, records: readonly unknown[], options: RenderOptions): AnswerTable {
  const objects = records.filter((record): record is Readonly<Record<string, unknown>> => typeof record === "object" && record !== null);
  const keys = [...new Set(objects.flatMap((record) => Object.keys(record).filter((key) => cell(record[key], options) !== undefined)))];
  const rows = objects.map((record) => keys.map((key) => cell(record[key], options) ?? ""));
  return { name: spaced(name), head: keys.map(spaced), rows };
}
