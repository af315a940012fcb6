import { type Arithmetic, exactArithmetic, isExact } from "../core/amount.js";
import type { Fraction } from "../core/fraction.js";

/** A quotient of whole numbers that is never reduced: for a few operations that is several times faster than fractions. */
export interface Ratio {
  readonly above: bigint;
  /** Above 0. */
  readonly below: bigint;
}

/** What ratios leave to the exact arithmetic of the engine: roots, logarithms, numbers that have outgrown their limit. */
export class BeyondRatio extends Error {}

/** As for the fractions of the engine; what is not reduced meets it sooner, and goes on there. */
const sizeLimit = 1n << 4096n;

function ratio(above: bigint, below: bigint): Ratio {
  if (below === 0n || below > sizeLimit || above > sizeLimit || -above > sizeLimit) throw new BeyondRatio();
  return below < 0n ? { above: -above, below: -below } : { above, below };
}

/** A fraction as a ratio. */
export function ratioOf({ numerator, denominator }: Fraction): Ratio {
  return { above: numerator, below: denominator };
}

function beyond(): never {
  throw new BeyondRatio();
}

function floor({ above, below }: Ratio): bigint {
  const quotient = above / below;
  return quotient * below > above ? quotient - 1n : quotient;
}

const whole = (above: bigint): Ratio => ({ above, below: 1n });

function order(a: Ratio, b: Ratio): number {
  const [left, right] = [a.above * b.below, b.above * a.below];
  return left < right ? -1 : left > right ? 1 : 0;
}

/** Exact arithmetic on ratios; what they cannot do ends in {@link BeyondRatio}. */
export const ratioArithmetic: Arithmetic<Ratio> = {
  literal(text) {
    const amount = exactArithmetic.literal(text);
    return isExact(amount) ? ratioOf(amount) : beyond();
  },
  add: (a, b) => (a.below === b.below ? ratio(a.above + b.above, a.below) : ratio(a.above * b.below + b.above * a.below, a.below * b.below)),
  subtract: (a, b) => (a.below === b.below ? ratio(a.above - b.above, a.below) : ratio(a.above * b.below - b.above * a.below, a.below * b.below)),
  multiply: (a, b) => ratio(a.above * b.above, a.below * b.below),
  divide: (a, b) => ratio(a.above * b.below, a.below * b.above),
  negate: (a) => ({ above: -a.above, below: a.below }),
  power(base, exponent) {
    const times = exponent.above % exponent.below === 0n ? exponent.above / exponent.below : beyond();
    const size = times < 0n ? -times : times;
    if (size > 64n) beyond();
    const [above, below] = [base.above ** size, base.below ** size];
    return times < 0n ? ratio(below, above) : ratio(above, below);
  },
  compare: order,
  min: (a, b) => (order(a, b) <= 0 ? a : b),
  max: (a, b) => (order(a, b) >= 0 ? a : b),
  ceil: ({ above, below }) => whole(-floor({ above: -above, below })),
  floor: (a) => whole(floor(a)),
  // Halves go away from nought.
  round({ above, below }) {
    const size = floor({ above: 2n * (above < 0n ? -above : above) + below, below: 2n * below });
    return whole(above < 0n ? -size : size);
  },
  sqrt: beyond,
  ln: beyond,
  log10: beyond,
  exp: beyond,
  sin: beyond,
  asin: beyond,
};
