import { exactArithmetic as arithmetic, toDecimal } from "../core/amount.js";
import type { Definition, GivenDefinition } from "../core/definition.js";
import { amountOf, makeQuantity, type Quantity } from "../core/quantity.js";
import { shownUnits } from "../core/fields.js";
import { brokenLimit, type Limited, limitsOf, writtenQuantity } from "../core/limits.js";
import { fromBase, unitScale } from "../core/unit-scale.js";
import { type System, type UnitCode, unitSystem } from "../core/units.js";
import { writeQuantity } from "../core/write-quantity.js";
import type { Draw } from "./draw.js";
import { type Marks, usualMarks } from "./usual-sizes.js";

/** How hard an exercise is. */
export type Level = 1 | 2 | 3;

/** How values are drawn. */
export interface Drawing {
  readonly draw: Draw;
  readonly level: Level;
  readonly units: System;
  /** The texts that an input may take, where the teacher has said. */
  readonly wished: ReadonlyMap<string, readonly (string | number)[]>;
  /** How far values may lie from what is usual: 1 for within it; more where nothing usual has an answer. */
  readonly widened: number;
  /** The values that inputs may take, once they are known. */
  readonly known: Map<string, readonly Quantity[]>;
}

/** Draws inputs for a calculation, one of each pair. */
export function drawInputs({ given }: Definition, drawing: Drawing): Readonly<Record<string, string | number>> {
  const chosen = chosenOfPairs(given, drawing);
  const rows = Object.entries(given).filter(([name, row]) => (row.either === undefined || chosen.has(name)) && (drawing.wished.has(name) || row.default === undefined || isDefaultGiven(drawing)));
  return Object.fromEntries(rows.map(([name, row]) => [name, drawValue(name, row, drawing)]));
}

/** One input of each pair: the one the teacher speaks of, else any. */
function chosenOfPairs(given: Definition["given"], { draw, wished }: Drawing): ReadonlySet<string> {
  const pairs = new Map<string, string[]>();
  for (const [name, { either }] of Object.entries(given)) if (either !== undefined) pairs.set(either, [...(pairs.get(either) ?? []), name]);
  return new Set([...pairs.values()].map((names) => names.find((name) => wished.has(name)) ?? draw.one(names as [string, ...string[]])));
}

/** Defaults are left to themselves at the first level, given at the third, and either at the second. */
function isDefaultGiven({ draw, level }: Drawing): boolean {
  return level === 3 || (level === 2 && draw.whole(0, 1) === 1);
}

function drawValue(name: string, row: GivenDefinition, drawing: Drawing): string | number {
  const { draw, wished, level } = drawing;
  const texts = wished.get(name);
  if (texts !== undefined) return draw.one(texts as [string | number, ...(string | number)[]]);
  const unit = unitFor(row, drawing);
  const key = `${name} ${unit} ${String(drawing.widened)}`;
  const values = drawing.known.get(key) ?? valuesOf(name, row, unit, drawing);
  drawing.known.set(key, values);
  const value = draw.one(values as [Quantity, ...Quantity[]]);
  if (unit === "in") return writeQuantity(value, { as: level === 3 && arithmetic.compare(amountOf(value), amountOf(writtenQuantity("length", "2 ft", name))) > 0 ? "feetInches" : "tape", tapeParts: 64 }).text;
  const { number, unit: symbol } = writeQuantity(value, { unit, digits: 8 });
  return symbol === "" ? Number(number) : `${number} ${symbol}`;
}

/** The unit in which a value is given: at the third level now and then one of the other system. */
function unitFor(row: GivenDefinition, { draw, level, units }: Drawing): UnitCode {
  const [first, ...others] = shownUnits(row);
  const wanted = level === 3 && draw.whole(1, 4) === 1 ? (units === "us" ? "si" : "us") : units;
  return [first, ...others].find((unit) => unitSystem(unit) === wanted) ?? first;
}

/** The values an input may take: what is usual and within its limits; where nothing is both, marks between the limits. */
function valuesOf(name: string, row: GivenDefinition, unit: UnitCode, { level, widened }: Drawing): readonly Quantity[] {
  const limits = limitsOf(row, name);
  const allowed = (list: readonly Quantity[]): readonly Quantity[] => list.filter((value) => brokenLimit(limits, amountOf(value)) === undefined);
  const usual = usualMarks(name, row.says, unit);
  const [from, to, step] = usual ?? [1, 20, 1];
  const fine = level === 1 ? coarser([from, to, step]) : [from, to, step] as const;
  const wide: Marks = widened === 1 ? fine : [from > 0 ? from / widened : from, to * widened, from > 0 ? from / widened : step];
  const found = allowed(marked(row, unit, wide));
  if (found.length > 0) return found;
  const { above, atLeast, below, atMost }: Limited = row;
  const texts = [above, atLeast, below, atMost].filter((text) => text !== undefined);
  const ends = texts.map((text) => (text === 0 ? 0 : toDecimal(fromBase(amountOf(writtenQuantity(row.is, text, name)), unit)).toNumber()));
  const [low, high] = [Math.min(...ends, usual === undefined ? 1 : from), Math.max(...ends, from)];
  const between = Array.from({ length: 9 }, (_, index) => quantityAt(row, unit, Number((low + ((high - low) * (index + 1)) / 10).toPrecision(3))));
  const last = allowed(between);
  return last.length > 0 ? last : between;
}

/** Every second or fourth mark, so that few are left. */
function coarser([from, to, step]: Marks): Marks {
  const many = (to - from) / step;
  return [from, to, step * (many > 24 ? 4 : many > 8 ? 2 : 1)];
}

function marked(row: GivenDefinition, unit: UnitCode, [from, to, step]: Marks): readonly Quantity[] {
  const count = Math.min(2000, Math.floor((to - from) / step + 1e-9));
  return Array.from({ length: count + 1 }, (_, index) => quantityAt(row, unit, from + index * step));
}

/** A number of marks apart from 0, without the crumbs that adding up leaves. */
function quantityAt({ is }: GivenDefinition, unit: UnitCode, number: number): Quantity {
  const { size, zero } = unitScale(unit);
  const written = is === "count" ? String(Math.max(1, Math.round(number))) : Number(number.toPrecision(6)).toFixed(8);
  const amount = arithmetic.multiply(written.startsWith("-") ? arithmetic.negate(arithmetic.literal(written.slice(1))) : arithmetic.literal(written), size);
  return makeQuantity(is, arithmetic.add(amount, zero), unit);
}
