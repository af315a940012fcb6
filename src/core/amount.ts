import { Decimal as DecimalDefault } from "decimal.js";
import { Fraction } from "fraction.js";

/**
 * Our own decimals: 40 digits, plain notation. A private clone, so that nobody's `Decimal.set` reaches it and ours
 * reaches nobody's.
 */
export const Decimal = DecimalDefault.clone({
  precision: 40,
  rounding: DecimalDefault.ROUND_HALF_UP,
  toExpNeg: -40,
  toExpPos: 60,
});
export type Decimal = DecimalDefault;

/** A number of the engine: an exact fraction, or a 40-digit decimal once a root or a logarithm has been taken. */
export type Amount = Fraction | Decimal;

/** An operation that has no finite value; the message is the reason in plain words. */
export class NoValue extends Error {}

/** The operations a program needs. Another arithmetic (plain numbers with a bound, ranges) touches no calculation. */
export interface Arithmetic<N> {
  readonly pi: () => N;
  /** A number as the formula writes it: decimal digits. */
  readonly literal: (digits: string) => N;
  readonly add: (a: N, b: N) => N;
  readonly subtract: (a: N, b: N) => N;
  readonly multiply: (a: N, b: N) => N;
  readonly divide: (a: N, b: N) => N;
  readonly negate: (a: N) => N;
  /** The exponent is a literal of the formula, so a fraction. */
  readonly power: (base: N, exponent: Fraction) => N;
  readonly compare: (a: N, b: N) => number;
  readonly ceil: (a: N) => N;
  readonly floor: (a: N) => N;
  readonly round: (a: N) => N;
  readonly sqrt: (a: N) => N;
  readonly ln: (a: N) => N;
  readonly log10: (a: N) => N;
  readonly exp: (a: N) => N;
  readonly sin: (a: N) => N;
  readonly asin: (a: N) => N;
}

/** Whether the amount is exact, and so safe to print with an equals sign. */
export function isExact(amount: Amount): amount is Fraction {
  return amount instanceof Fraction;
}

/** An exact amount from whole numbers. */
export function exact(numerator: bigint, denominator = 1n): Fraction {
  return new Fraction(numerator, denominator);
}

/** The amount as a decimal of 40 digits. */
export function toDecimal(amount: Amount): Decimal {
  if (!isExact(amount)) return amount;
  const numerator = new Decimal((amount.s * amount.n).toString());
  return amount.d === 1n ? numerator : numerator.div(amount.d.toString());
}

/** Fractions beyond this many bits (sums over long records) go on as decimals, marked approximate. */
const sizeLimit = 1n << 4096n;

function bounded(fraction: Fraction): Amount {
  return fraction.n > sizeLimit || fraction.d > sizeLimit ? toDecimal(fraction) : fraction;
}

function finite(decimal: Decimal, reason: string): Decimal {
  if (!decimal.isFinite()) throw new NoValue(reason);
  return decimal;
}

/** Decimals within this of a whole number are taken as that number by a rounding. */
const nearness = new Decimal("1e-24");

function roundDecimal(amount: Decimal, otherwise: (decimal: Decimal) => Decimal): Fraction {
  const nearest = amount.round();
  const whole = amount.minus(nearest).abs().lte(nearness) ? nearest : otherwise(amount);
  return exact(BigInt(whole.toFixed(0)));
}

const half = exact(1n, 2n);

/** The numbers that formulas write, read once. */
const literals = new Map<string, Amount>();

/** Exact fractions as far as they reach, decimals of 40 digits beyond. */
export const exactArithmetic: Arithmetic<Amount> = {
  pi: () => Decimal.acos(-1),
  literal(digits) {
    const known = literals.get(digits);
    if (known !== undefined) return known;
    const read = readDigits(digits);
    literals.set(digits, read);
    return read;
  },
  add: (a, b) => (isExact(a) && isExact(b) ? bounded(a.add(b)) : finite(toDecimal(a).plus(toDecimal(b)), "the sum is too large")),
  subtract: (a, b) =>
    isExact(a) && isExact(b) ? bounded(a.sub(b)) : finite(toDecimal(a).minus(toDecimal(b)), "the difference is too large"),
  multiply: (a, b) =>
    isExact(a) && isExact(b) ? bounded(a.mul(b)) : finite(toDecimal(a).times(toDecimal(b)), "the product is too large"),
  divide(a, b) {
    if (isZero(b)) throw new NoValue("it divides by 0");
    return isExact(a) && isExact(b) ? bounded(a.div(b)) : finite(toDecimal(a).div(toDecimal(b)), "the quotient is too large");
  },
  negate: (a) => a.neg(),
  power(base, exponent) {
    if (exponent.s < 0n && isZero(base)) throw new NoValue("it divides by 0");
    if (exponent.d === 1n && isExact(base)) return bounded(base.pow(exponent));
    if (sign(base) < 0 && exponent.d !== 1n) throw new NoValue("it takes a root of a negative number");
    return finite(toDecimal(base).pow(toDecimal(exponent)), "the power is too large");
  },
  compare: (a, b) => (isExact(a) && isExact(b) ? a.compare(b) : toDecimal(a).cmp(toDecimal(b))),
  ceil: (a) => (isExact(a) ? a.ceil() : roundDecimal(a, (decimal) => decimal.ceil())),
  floor: (a) => (isExact(a) ? a.floor() : roundDecimal(a, (decimal) => decimal.floor())),
  round(a) {
    if (!isExact(a)) return roundDecimal(a, (decimal) => decimal.round());
    return a.s < 0n ? a.neg().add(half).floor().neg() : a.add(half).floor();
  },
  sqrt(a) {
    if (sign(a) < 0) throw new NoValue("it takes the root of a negative number");
    return toDecimal(a).sqrt();
  },
  ln(a) {
    if (sign(a) <= 0) throw new NoValue("it takes the logarithm of a number that is not above 0");
    return toDecimal(a).ln();
  },
  log10(a) {
    if (sign(a) <= 0) throw new NoValue("it takes the logarithm of a number that is not above 0");
    return toDecimal(a).log(10);
  },
  exp: (a) => finite(toDecimal(a).exp(), "the exponential is too large"),
  sin: (a) => toDecimal(a).sin(),
  asin(a) {
    const decimal = toDecimal(a);
    if (decimal.abs().gt(1)) throw new NoValue("it takes the arcsine of a number beyond 1");
    return decimal.asin();
  },
};

/** -1, 0 or 1. */
export function sign(amount: Amount): number {
  if (isExact(amount)) return amount.n === 0n ? 0 : Number(amount.s);
  return amount.isZero() ? 0 : amount.s;
}

/** Whether the amount is nought. */
export function isZero(amount: Amount): boolean {
  return sign(amount) === 0;
}

/** Reads decimal digits with an optional point and exponent, `"1.5e3"`; the text must have been checked. */
export function readDigits(text: string): Fraction {
  const [digits = "", exponent = "0"] = text.toLowerCase().split("e");
  const [whole = "", decimals = ""] = digits.split(".");
  const scale = Number(exponent) - decimals.length;
  const number = BigInt(whole.replace("+", "") + decimals);
  return scale < 0 ? exact(number, 10n ** BigInt(-scale)) : exact(number * 10n ** BigInt(scale));
}

/** The exact value as text that reads back equal: `"3/8"`, `"12"`; a decimal of 30 digits where it is approximate. */
export function amountText(amount: Amount): string {
  if (!isExact(amount)) return amount.toSignificantDigits(30).toString();
  const sign = amount.s < 0n ? "-" : "";
  return amount.d === 1n ? `${sign}${amount.n.toString()}` : `${sign}${amount.n.toString()}/${amount.d.toString()}`;
}
