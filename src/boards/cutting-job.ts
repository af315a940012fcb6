import type { Fraction } from "fraction.js";
import { exact } from "../core/amount.js";
import type { CuttingJob } from "./cutting.js";
import { inOrder } from "./face.js";

/** A cutting job in whole parts of a length, and how long one such part is. */
export interface ScaledJob {
  readonly job: CuttingJob;
  /** A number of parts as a length in base units. */
  readonly lengthOf: (parts: bigint) => Fraction;
}

/** Brings lengths to whole parts of the longest length that divides all of them; equal lengths are put together. */
export function cuttingJobOf(wanted: readonly { readonly length: Fraction; readonly count: number }[], stock: readonly Fraction[], sawCut: Fraction): ScaledJob {
  const all = [...wanted.map(({ length }) => length), ...stock, sawCut];
  const part = all.reduce((one, other) => (other.n === 0n ? one : one.gcd(other)));
  const parts = (length: Fraction): bigint => length.div(part).n;
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
