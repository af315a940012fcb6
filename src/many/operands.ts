import { type Amount, exact, isExact, isZero, sign, toDecimal } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import type { Bounded } from "./real-kernels.js";
import { mostWhole, unitRoundoff } from "./whole-kernels.js";

/** The same number in all rows, as the engine has it. */
export interface Fixed {
  readonly kind: "fixed";
  readonly amount: Amount;
}

/** In each row a whole number, times a scale that all rows share; all of it is exact. The scale is above 0. */
export interface Whole extends Bounded {
  readonly kind: "whole";
  readonly scale: Fraction;
  /** No row's number is larger, either way. */
  readonly most: number;
}

/** In each row a double with a bound on its error, times a scale that all rows share. The scale is above 0. */
export interface Real extends Bounded {
  readonly kind: "real";
  readonly scale: Fraction;
}

/** In each row a quotient of whole numbers, not worked out yet: as long as it is not, nothing is rounded. */
export interface Quotient {
  readonly kind: "quotient";
  readonly above: Whole;
  readonly below: Whole;
}

/** What stands in a slot of a plan. */
export type Operand = Fixed | Whole | Quotient | Real;

/** What a plan cannot do in plain numbers at all; every row is then worked out exactly. */
export class BeyondPlain extends Error {}

/** A fraction as the nearest double, or nearly; within one unit of roundoff. */
export function nearestDouble(amount: Amount): number {
  const number = toDecimal(amount).toNumber();
  const size = Math.abs(number);
  if (!isZero(amount) && !(size > 1e-200 && size < 1e200)) throw new BeyondPlain();
  return number;
}

/** A positive fraction as two whole numbers, where both can be doubles. */
export function wholeParts({ numerator, denominator }: Fraction): readonly [above: number, below: number] | undefined {
  return numerator <= mostWhole && denominator <= mostWhole ? [Number(numerator), Number(denominator)] : undefined;
}

/** How two operands come to one scale: `a * p` and `b * r`, both of that scale. */
export interface Aligned {
  readonly p: number;
  readonly r: number;
  readonly scale: Fraction;
  /** How far `a * p` and `b * r` may be off in doubles, in parts of them, where a and b are no whole numbers. */
  readonly inexact: number;
  /** Whether p and r are whole, and so is what they are multiplied with if a and b are. */
  readonly whole: boolean;
}

function isNothing(operand: Whole | Real): boolean {
  return operand.kind === "whole" && operand.most === 0;
}

/** Brings two operands to one scale, by whole numbers where they are small enough for what is `most` in the rows. */
export function align(a: Whole | Real, b: Whole | Real): Aligned {
  // Nought fits every scale.
  if (isNothing(a)) return { p: 1, r: 1, scale: b.scale, inexact: 0, whole: true };
  if (isNothing(b)) return { p: 1, r: 1, scale: a.scale, inexact: 0, whole: true };
  const ratio = a.scale.div(b.scale);
  const parts = wholeParts(ratio);
  if (parts !== undefined && Math.max(...parts) <= 2 ** 26) return { p: parts[0], r: parts[1], scale: b.scale.div(exact(BigInt(parts[1]))), inexact: parts[0] * parts[1] === 1 ? 0 : 2 * unitRoundoff, whole: true };
  return { p: nearestDouble(ratio), r: 1, scale: b.scale, inexact: 4 * unitRoundoff, whole: false };
}

/** The buffers of one block: those of constants are filled once. */
export class Buffers {
  readonly rows: number;
  readonly noErrors: Float64Array;
  readonly one: Whole;

  constructor(rows: number) {
    this.rows = rows;
    this.noErrors = new Float64Array(rows);
    this.one = this.whole(exact(1n), 1);
    this.one.values.fill(1);
  }

  whole(scale: Fraction, most: number): Whole {
    return { kind: "whole", values: new Float64Array(this.rows), errors: this.noErrors, scale, most };
  }

  real(scale: Fraction): Real {
    return { kind: "real", values: new Float64Array(this.rows), errors: new Float64Array(this.rows), scale };
  }

  /** A number that is the same in all rows as an operand like the others. */
  spread({ amount }: Fixed): Whole | Real {
    if (isExact(amount)) {
      const one = isZero(amount) ? this.whole(exact(1n), 0) : this.whole(amount.abs(), 1);
      one.values.fill(sign(amount));
      return one;
    }
    const real = this.real(exact(1n));
    const value = nearestDouble(amount);
    real.values.fill(value);
    real.errors.fill(Math.abs(value) * 2 * unitRoundoff);
    return real;
  }
}
