import { exactArithmetic as arithmetic, readDigits, toDecimal } from "../core/amount.js";
import { fromBase, toBase } from "../core/unit-scale.js";
import type { UnitCode } from "../core/units.js";
import { type Edges, isWithin } from "./edges.js";

/** The numbers that an input may have, as doubles in the unit of its column; what is outside, `.try` tells why. */
export interface Range {
  readonly least: number;
  readonly most: number;
  /** Whether only whole numbers are allowed. */
  readonly whole: boolean;
}

/** The reader takes no exponent beyond 30. */
const largest = 9e30;
/** The smallest size that is read, but for 0. */
export const smallest = 1e-30;

const bytes = new DataView(new ArrayBuffer(8));

/** The next double up or down. */
function nextDouble(value: number, way: 1 | -1): number {
  if (value === 0) return way * Number.MIN_VALUE;
  bytes.setFloat64(0, value);
  bytes.setBigInt64(0, bytes.getBigInt64(0) + (value > 0 === way > 0 ? 1n : -1n));
  return bytes.getFloat64(0);
}

/**
 * The range of an input. A double is read by its shortest text, and texts stand in the order of their doubles: so it is
 * enough to ask the double nearest to a limit on which side of it its text lies.
 */
export function rangeOf({ edges, whole }: Edges = { edges: [], whole: false }, unit: UnitCode): Range {
  let [least, most] = [-largest, largest];
  for (const edge of edges) {
    const amount = fromBase(edge.amount, unit);
    const nearest = toDecimal(amount).toNumber();
    const here = isWithin(edge, arithmetic.compare(readDigits(String(nearest)), amount));
    if (edge.low) least = Math.max(least, here ? nearest : nextDouble(nearest, 1));
    else most = Math.min(most, here ? nearest : nextDouble(nearest, -1));
  }
  // Whole is meant in base units; where that is another unit, all is left to the exact way.
  const inBase = toBase(arithmetic.literal("1"), unit);
  return whole && arithmetic.compare(inBase, arithmetic.literal("1")) !== 0 ? { least: Infinity, most: -Infinity, whole } : { least, most, whole };
}

/** Adding and taking away 1.5 * 2^52 rounds a double to a whole number. */
const shifter = 6755399441055744;

/** Up to which size a quotient is the very number that is read: one of at most 15 digits, which doubles tell apart. */
function mostOver(denominator: number): number {
  return denominator === 1 || denominator % 10 === 0 ? 1e15 : 1e9 * denominator;
}

/**
 * Reads numbers as whole numbers over one denominator; a row outside the range is marked, and read as 1.
 *
 * @returns the largest size, or NaN where some number is no such quotient
 */
export function readWhole(out: Float64Array, numbers: Float64Array, denominator: number, { least, most, whole: only }: Range, marks: Uint8Array, count: number): number {
  let size = 0;
  // Of a power of two the product is exact, and whole or not; a decimal has to come back from its quotient.
  const binary = denominator % 10 !== 0;
  for (let i = 0; i < count; i += 1) {
    const number = numbers[i] as number;
    if (number >= least && number <= most && (!only || Math.floor(number) === number)) {
      const scaled = number * denominator;
      const whole = scaled + shifter - shifter;
      if (binary ? whole !== scaled : whole / denominator !== number) return NaN;
      out[i] = whole;
      size = Math.max(size, Math.abs(whole));
    } else {
      marks[i] = 1;
      out[i] = denominator;
    }
  }
  return size <= mostOver(denominator) ? size : NaN;
}

/** Reads numbers as they are: the decimal that each stands for is at most half a unit in the last place away. */
export function readReal(values: Float64Array, errors: Float64Array, numbers: Float64Array, { least, most, whole: only }: Range, marks: Uint8Array, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const number = numbers[i] as number;
    const fits = number >= least && number <= most && (!only || Math.floor(number) === number) && (number === 0 || Math.abs(number) >= smallest);
    if (!fits) marks[i] = 1;
    values[i] = fits ? number : 1;
    errors[i] = fits ? Math.abs(number) * 2 ** -53 : 0;
  }
}

/** What people count in: sixteenths and their like, then decimals. */
const denominators = [1, 2, 4, 8, 16, 32, 64, 10, 100, 1000, 1e4, 1e5, 1e6, 1e7, 1e8];

/** The first denominator, from one on, over which all numbers are whole; 0 where there is none. */
export function denominatorFor(numbers: Float64Array, from: number, range: Range, count: number): number {
  const [trial, marks] = [new Float64Array(count), new Uint8Array(count)];
  for (const denominator of denominators.slice(Math.max(0, denominators.indexOf(from)))) {
    if (readWhole(trial, numbers, denominator, range, marks, count) >= 0) return denominator;
  }
  return 0;
}
