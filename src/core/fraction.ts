/** A fraction with more than 1,024 bits above or below is put in lowest terms as it is made, so that long sums stay small. */
const large = 1n << 1024n;
const least = -large;

/**
 * An exact fraction. It is put in lowest terms when it is asked for its parts: most fractions are only a step to the next,
 * and the greatest common divisor would take longer than the step.
 */
export class Fraction {
  private above: bigint;
  private below: bigint;
  private lowest = false;

  /** The lower part is more than nought. */
  constructor(above: bigint, below: bigint) {
    this.above = above;
    this.below = below;
    if (below > large || above > large || above < least) this.inLowestTerms();
  }

  /** The upper part in lowest terms, with the sign. */
  get numerator(): bigint {
    return this.inLowestTerms().above;
  }

  /** The lower part in lowest terms, more than nought. */
  get denominator(): bigint {
    return this.inLowestTerms().below;
  }

  /** Whether the upper or the lower part in lowest terms is beyond a size, which is more than what is left unreduced. */
  exceeds(size: bigint): boolean {
    return this.lowest && (this.below > size || this.above > size || this.above < -size);
  }

  /** -1, 0 or 1. */
  sign(): number {
    return this.above > 0n ? 1 : this.above < 0n ? -1 : 0;
  }

  add(other: Fraction): Fraction {
    return this.below === other.below ? new Fraction(this.above + other.above, this.below) : new Fraction(this.above * other.below + other.above * this.below, this.below * other.below);
  }

  sub(other: Fraction): Fraction {
    return this.below === other.below ? new Fraction(this.above - other.above, this.below) : new Fraction(this.above * other.below - other.above * this.below, this.below * other.below);
  }

  mul(other: Fraction): Fraction {
    return new Fraction(this.above * other.above, this.below * other.below);
  }

  /** Divides by a fraction that is not nought. */
  div(other: Fraction): Fraction {
    return other.above < 0n ? new Fraction(-this.above * other.below, this.below * -other.above) : new Fraction(this.above * other.below, this.below * other.above);
  }

  /** To a whole power; nought to none below nought. */
  pow(exponent: bigint): Fraction {
    return exponent < 0n ? new Fraction(1n, 1n).div(this.pow(-exponent)) : new Fraction(this.above ** exponent, this.below ** exponent);
  }

  neg(): Fraction {
    return new Fraction(-this.above, this.below);
  }

  abs(): Fraction {
    return this.above < 0n ? this.neg() : this;
  }

  /** Less than nought, nought or more, as this is less than the other, equal or more. */
  compare(other: Fraction): number {
    const [mine, theirs] = this.below === other.below ? [this.above, other.above] : [this.above * other.below, other.above * this.below];
    return mine < theirs ? -1 : mine > theirs ? 1 : 0;
  }

  equals(other: Fraction): boolean {
    return this.compare(other) === 0;
  }

  isWhole(): boolean {
    return this.above % this.below === 0n;
  }

  floor(): Fraction {
    const whole = this.above / this.below;
    return new Fraction(this.above < 0n && whole * this.below !== this.above ? whole - 1n : whole, 1n);
  }

  ceil(): Fraction {
    const whole = this.above / this.below;
    return new Fraction(this.above > 0n && whole * this.below !== this.above ? whole + 1n : whole, 1n);
  }

  /** To the nearest whole number; halves go away from nought. */
  round(): Fraction {
    const twice = 2n * this.above;
    return new Fraction((this.above < 0n ? twice - this.below : twice + this.below) / (2n * this.below), 1n);
  }

  /** `"3/8"`, `"-12"`. */
  toString(): string {
    const { numerator, denominator } = this;
    return denominator === 1n ? String(numerator) : `${String(numerator)}/${String(denominator)}`;
  }

  /** The same fraction; what is kept and used often is put in lowest terms once. */
  inLowestTerms(): this {
    if (this.lowest) return this;
    let divisor = this.below;
    for (let rest = this.above % divisor; rest !== 0n; ) [divisor, rest] = [rest, divisor % rest];
    if (divisor < 0n) divisor = -divisor;
    this.above /= divisor;
    this.below /= divisor;
    this.lowest = true;
    return this;
  }
}
