import { exact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";
import type { CuttingJob } from "./cutting.js";
import { inOrder } from "../shapes/face.js";

/** A cutting job in whole parts of a length, and how long one such part is. */
export interface ScaledJob {
  readonly job: CuttingJob;
  /** A number of parts as a length in base units. */
  readonly lengthOf: (parts: bigint) => Fraction;
}

/** Brings lengths to whole parts of the longest length that divides all of them; equal lengths are put together. */
export function cuttingJobOf(wanted: readonly { readonly length: Fraction; readonly count: number }[], stock: readonly Fraction[], sawCut: Fraction): ScaledJob {
  const all = [...wanted.map(({ length }) => length), ...stock, sawCut];
  const part = all.reduce(commonPart);
  const parts = (length: Fraction): bigint => length.div(part).numerator;
  const lengths = [...inOrder(wanted.map(({ length }) => length))].reverse();
  return {
    job: {
      lengths: lengths.map(parts),
      counts: lengths.map((length) => wanted.filter((one) => one.length.equals(length)).reduce((sum, { count }) => sum + count, 0)),
      stock: [...inOrder(stock)].reverse().map(parts),
      sawCut: parts(sawCut),
    },
    lengthOf: (number) => part.mul(exact(number)),
  };
}

/** The longest length that divides two, the first of which is more than nought. */
function commonPart(one: Fraction, other: Fraction): Fraction {
  let [a, b] = [one.numerator * other.denominator, other.numerator * one.denominator];
  while (b !== 0n) [a, b] = [b, a % b];
  return exact(a, one.denominator * other.denominator);
}
