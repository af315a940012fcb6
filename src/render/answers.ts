import { spaced } from "../core/spaced.js";
import { isQuantity, type Quantity } from "../core/quantity.js";
import type { Line, Solution } from "../core/solution.js";
import type { Figure } from "../core/working.js";
import { type System, type UnitCode, unitSystem } from "../core/units.js";
import { unitFor, unitsIn, writeQuantity } from "../core/write-quantity.js";
import type { Cell, Table } from "./section.js";

/** In which units and with how many digits a value is shown. */
export interface Reader {
  readonly units?: System | undefined;
  readonly digits: number;
}

/** A quantity as the reader wants it: in his units, a length in inches with a fraction as the tape shows it. */
export function quantityFigure(quantity: Quantity, shown: readonly UnitCode[], { units, digits }: Reader): Figure {
  const unit = unitFor(shown.length > 0 ? shown : alike(quantity, units), units, quantity.unit);
  const decimal = writeQuantity(quantity, { unit, digits });
  if (unit !== "in") return decimal;
  const tape = writeQuantity(quantity, { as: "tape", tapeParts: 64 });
  return tape.exact && tape.text !== decimal.text ? tape : decimal;
}

/** Where nothing says in which unit of the other system a value is shown: one of the nearest size. */
function alike({ dimension, unit }: Quantity, units: System | undefined): readonly UnitCode[] {
  if (units === undefined || unitSystem(unit) === units || unitSystem(unit) === "both") return [unit];
  const counterpart: Partial<Record<UnitCode, UnitCode>> = {
    mil: "um", in: "mm", ft: "m", yd: "m", in2: "mm2", ft2: "m2", in3: "cm3", ft3: "L", yd3: "m3", gal: "L", qt: "L", lb: "kg", oz: "g", ton: "t", degF: "degC",
    degFDifference: "degCDifference", lbf: "N", psf: "Pa", psi: "kPa", mph: "km/h", "lb/ft3": "kg/m3", "lb/ft2": "kg/m2", "ft2/gal": "m2/L",
    um: "mil", mm: "in", m: "ft", m2: "ft2", L: "gal", m3: "yd3", kg: "lb", g: "oz", degC: "degF", N: "lbf", Pa: "psf", "kg/m3": "lb/ft3", "kg/m2": "lb/ft2",
  };
  const other = counterpart[unit] ?? unitsIn(dimension, units)[0];
  return other === undefined ? [unit] : [other];
}

/** A value as a cell: `≈` stands before a figure that leaves digits out. */
export function valueCell(value: Line["value"], shown: readonly UnitCode[], reader: Reader): Cell {
  if (typeof value !== "object") return [typeof value === "boolean" ? (value ? "yes" : "no") : String(value)];
  const figure = quantityFigure(value, shown, reader);
  return figure.exact ? [figure] : ["≈ ", figure];
}

/** The answers of a solution without steps of its own: one table of single answers, and one for each list of records. */
export function answerTables(solution: Solution, readers: readonly Reader[], heads: readonly string[]): readonly Table[] {
  if (typeof solution.answers !== "object" || solution.answers === null) return [];
  const rows: Cell[][] = [];
  const tables: Table[] = [];
  for (const [name, value] of Object.entries(solution.answers as Readonly<Record<string, unknown>>)) {
    const cells = inEach(value, readers);
    if (cells !== undefined) rows.push([[spaced(name)], ...cells]);
    else if (Array.isArray(value)) tables.push(recordTable(spaced(name), value, readers, heads));
    else if (typeof value === "object" && value !== null) rows.push(...nestedRows(spaced(name), value, readers));
  }
  const single: Table = { kind: "table", title: "Result", head: ["what", ...heads], rows, needsHead: heads.length > 1 };
  return [single, ...tables].filter((one) => one.rows.length > 0);
}

function nestedRows(name: string, value: object, readers: readonly Reader[]): readonly Cell[][] {
  return Object.entries(value).flatMap(([key, inner]): Cell[][] => {
    const cells = inEach(inner, readers);
    return cells === undefined ? [] : [[[`${name}, ${spaced(key)}`], ...cells]];
  });
}

/** A value as one cell for each reader; nothing where it does not fit into one. */
function inEach(value: unknown, readers: readonly Reader[]): readonly Cell[] | undefined {
  const cells = readers.map((reader) => cell(value, reader));
  return cells.every((one) => one !== undefined) ? cells : undefined;
}

/** What fits into one cell: a quantity, a word, a number, a yes or no, a short list of those; nothing else. */
function cell(value: unknown, reader: Reader): Cell | undefined {
  if (isQuantity(value)) return valueCell(value, [], reader);
  if (typeof value === "string" || typeof value === "number" || typeof value === "boolean") return valueCell(value, [], reader);
  if (!Array.isArray(value) || value.length === 0) return undefined;
  const cells = value.map((one: unknown) => (Array.isArray(one) ? undefined : cell(one, reader)));
  return cells.every((one) => one !== undefined) ? cells.flatMap((one, index) => (index === 0 ? one : [", ", ...one])) : undefined;
}

/** A record whose inner records are told in columns of their own: the mark of a course is `top, reads`. */
function flat(record: object, readers: readonly Reader[]): Readonly<Record<string, unknown>> {
  const entries = Object.entries(record as Readonly<Record<string, unknown>>).flatMap(([key, value]): (readonly [string, unknown])[] => {
    if (typeof value !== "object" || value === null || Array.isArray(value) || inEach(value, readers) !== undefined) return [[spaced(key), value]];
    // How a figure came about is told beside it, among the parts, not in columns of its row.
    if ("steps" in value && "parts" in value) return [];
    return Object.entries(flat(value, readers)).map(([inner, one]) => [`${spaced(key)}, ${inner}`, one]);
  });
  return Object.fromEntries(entries);
}

/** A list of records: a column for each key; the two figures of a quantity in both systems stand in one cell. */
function recordTable(title: string, records: readonly unknown[], readers: readonly Reader[], heads: readonly string[]): Table {
  const objects = records.filter((record) => typeof record === "object" && record !== null).map((record) => flat(record, readers));
  const keys = [...new Set(objects.flatMap((record) => Object.keys(record).filter((key) => inEach(record[key], readers) !== undefined)))];
  const rows = objects.map((record) => keys.map((key) => sideBySide(inEach(record[key], readers) ?? [[""]])));
  return { kind: "table", title: heads.length > 1 ? `${title} (${heads.join(" | ")})` : title, head: keys, rows, needsHead: true };
}

function sideBySide([first = [], second]: readonly Cell[]): Cell {
  return second === undefined || JSON.stringify(first) === JSON.stringify(second) ? first : [...first, " | ", ...second];
}
