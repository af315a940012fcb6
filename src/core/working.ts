import { type Amount, exact, exactArithmetic as arithmetic } from "./amount.js";
import { formulaText, namesIn } from "./formula.js";
import { onlyInSine, productIn } from "./formula-units.js";
import { amountOf, type Quantity } from "./quantity.js";
import type { Line, Solution, Step } from "./solution.js";
import { type Family, familyOf } from "./unit-family.js";
import { noUnits, productSize, productText, sameUnits, timesUnits, type UnitProduct, unitProduct } from "./unit-product.js";
import { unitScale } from "./unit-scale.js";
import { type System, type UnitCode, unitSymbol } from "./units.js";
import { decimalText, unitFor } from "./write-quantity.js";

/** A number as it stands in a worked line, with its unit, and whether no digit was left out. */
export interface Figure {
  readonly number: string;
  readonly unit: string;
  readonly exact: boolean;
}

/** A conversion as it is shown: `0.75 in / 12 in/ft = 0.0625 ft`. */
export interface Conversion {
  /** The name of the operand; nothing where it is the result that is converted. */
  readonly name?: string;
  readonly from: Figure;
  readonly operator: "*" | "/";
  readonly factor: Figure;
  readonly to: Figure;
}

/** A step worked with numbers: what a learner with a pocket calculator types, and what he gets. */
export interface Working {
  readonly step: Step;
  /** What stands for each name in the formula. */
  readonly operands: ReadonlyMap<string, Figure>;
  readonly conversions: readonly Conversion[];
  /** The result in the units that the operands give. */
  readonly result: Figure;
  /** The result in the unit that is shown, where that is another. */
  readonly shown?: Conversion;
}

/** How a reader wants figures. */
export interface Reading {
  /** The system of units; that of the inputs unless told otherwise. */
  readonly units?: System;
  /** Significant digits of results; operands have two more. 6 unless told otherwise. */
  readonly digits?: number;
}

/**
 * Works out how the steps of a solution are shown: the numbers that are put in, conversions, results. A step works in
 * one family of units (in, in2, in3; ft, ft2, ft3; m, m2, m3) and converts at its end.
 *
 * @param solution - any solution; one of a composed function has no steps of its own
 * @param reading - the units and digits the reader wants
 * @returns one working a step, in order
 */
export function workings(solution: Solution, reading: Reading = {}): readonly Working[] {
  const lines = new Map<string, Line>();
  for (const line of [...solution.given, ...solution.constants, ...solution.steps]) lines.set(line.name, line);
  return solution.steps.map((step) => working(step, lines, reading));
}

/** An operand: its value, and the unit in which the reader sees it. */
interface Operand {
  readonly name: string;
  readonly value: Quantity;
  readonly unit: UnitCode;
}

function working(step: Step, lines: ReadonlyMap<string, Line>, { units, digits = 6 }: Reading): Working {
  const operands = namesIn(step.formula).flatMap((name): Operand[] => {
    const line = lines.get(name);
    return line === undefined || typeof line.value !== "object" ? [] : [{ name, value: line.value, unit: unitFor(line.shown, units, line.value.unit) }];
  });
  const family = familyOf(operands.filter(({ value }) => value.dimension !== "temperature").map(({ unit }) => unit));
  const figures = new Map<string, Figure>();
  const conversions: Conversion[] = [];
  const products = new Map<string, UnitProduct>();
  for (const { name, value, unit } of operands) {
    const seen = seenIn(value, unit);
    const worked = onlyInSine(step.formula, name) ? seen : workedIn(seen, family);
    products.set(name, worked.product);
    figures.set(name, figure(worked, digits + 2));
    if (seen.text !== worked.text) conversions.push({ name, ...conversion(seen, worked, digits + 2) });
  }
  const unit = unitFor(step.shown, units, step.value.unit);
  const shown = seenIn(step.value, unit);
  const result = resultIn(step, productIn(step.formula, products), shown);
  return {
    step,
    operands: figures,
    conversions,
    result: figure(result, digits),
    ...(result.text === shown.text ? {} : { shown: conversion(result, shown, digits) }),
  };
}

/** An amount in a product of units, and how those are written. */
interface Sized {
  readonly amount: Amount;
  readonly base: Amount;
  readonly product: UnitProduct;
  readonly text: string;
}

function seenIn(value: Quantity, unit: UnitCode): Sized {
  const { size, zero } = unitScale(unit);
  const base = amountOf(value);
  return { amount: arithmetic.divide(arithmetic.subtract(base, zero), size), base, product: unitProduct(unit), text: unitSymbol(unit) };
}

function sizedIn(base: Amount, product: UnitProduct): Sized {
  return { amount: arithmetic.divide(base, productSize(product)), base, product, text: productText(product) };
}

/** A value in the family's units; a point on a scale and a bare number stay as they are. */
function workedIn(seen: Sized, family: Family): Sized {
  if (seen.text === "deg") return { ...sizedIn(seen.base, noUnits), text: "rad" };
  const product = [...seen.product].reduce<UnitProduct>((all, [code, power]) => timesUnits(all, family.get(code) ?? new Map([[code, 1]]), power), noUnits);
  return sameUnits(product, seen.product) ? seen : sizedIn(seen.base, product);
}

/** The result in the units that come out; a point on a scale and an angle in their own. */
function resultIn(step: Step, product: UnitProduct, shown: Sized): Sized {
  const { dimension } = step.value;
  if (dimension === "temperature" || sameUnits(product, shown.product)) return dimension === "angle" || shown.text === "%" ? bare(step, shown) : shown;
  return sizedIn(shown.base, product);
}

/** A bare number for a percentage, radians for degrees: what the formula itself gives. */
function bare(step: Step, shown: Sized): Sized {
  if (step.formula.kind === "name") return shown;
  return { amount: shown.base, base: shown.base, product: noUnits, text: step.value.dimension === "angle" ? "rad" : "" };
}

function figure({ amount, text }: Sized, digits: number): Figure {
  const written = decimalText(amount, { digits });
  return { number: written.text, unit: text, exact: written.exact };
}

function conversion(from: Sized, to: Sized, digits: number): Omit<Conversion, "name"> {
  const wordless = [from.text, to.text].some((text) => text === "%" || text === "rad" || text === "deg");
  const factor = wordless ? ratioOf(from, to) : arithmetic.divide(productSize(from.product), productSize(to.product));
  const grows = arithmetic.compare(factor, exact(1n)) >= 0;
  const written = decimalText(grows ? factor : arithmetic.divide(exact(1n), factor), { digits });
  const [over, under] = grows ? [to, from] : [from, to];
  const unit = wordless ? over.text : productText(timesUnits(over.product, under.product, -1));
  return { from: figure(from, digits), operator: grows ? "*" : "/", factor: { number: written.text, unit, exact: written.exact }, to: figure(to, digits) };
}

/** What takes one to the other where that is no matter of unit sizes: per cent and degrees. */
function ratioOf(from: Sized, to: Sized): Amount {
  const size = (one: Sized): Amount => (one.text === "%" ? unitScale("%").size : one.text === "deg" ? unitScale("deg").size : exact(1n));
  return arithmetic.divide(size(from), size(to));
}

/** A formula with figures in the place of its names: `100 ft2 * 0.183 * 0.0625 ft`. */
export function figuresText({ step, operands }: Working): string {
  return formulaText(step.formula, (name, raised) => {
    const figure = operands.get(name);
    if (figure === undefined) return name;
    const bare = figure.unit === "" || figure.unit === "rad";
    const text = bare ? figure.number : `${figure.number} ${figure.unit}`;
    return figure.number.startsWith("-") || (raised && !bare) ? `(${text})` : text;
  });
}
