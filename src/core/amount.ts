import { Decimal } from "./decimal.js";
import { asin, exp, ln, log10, power, sin } from "./forty-digits.js";
import { Fraction } from "./fraction.js";
import type { NoValueReason } from "./wording.js";

export { Decimal };

/** A number of the engine: an exact fraction, or a 40-digit decimal once a root or a logarithm has been taken. */
export type Amount = Fraction | Decimal;

/** An operation that has no finite value. */
export class NoValue extends Error {
  constructor(readonly reason: NoValueReason) {
    super(reason);
  }
}

/** The operations a program needs. Another arithmetic (plain numbers with a bound, ranges) touches no calculation. */
export interface Arithmetic<N> {
  /** A number as the formula writes it: decimal digits, or `pi`. */
  readonly literal: (text: string) => N;
  readonly add: (a: N, b: N) => N;
  readonly subtract: (a: N, b: N) => N;
  readonly multiply: (a: N, b: N) => N;
  readonly divide: (a: N, b: N) => N;
  readonly negate: (a: N) => N;
  readonly power: (base: N, exponent: N) => N;
  readonly compare: (a: N, b: N) => number;
  readonly min: (a: N, b: N) => N;
  readonly max: (a: N, b: N) => N;
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
  const { numerator, denominator } = amount;
  return denominator === 1n ? new Decimal(numerator) : new Decimal(numerator).div(denominator);
}

/** Fractions beyond this many bits (sums over long records) go on as decimals, marked approximate. */
const sizeLimit = 1n << 4096n;

function bounded(fraction: Fraction): Amount {
  return fraction.exceeds(sizeLimit) ? toDecimal(fraction) : fraction;
}

function finite(decimal: Decimal): Decimal {
  refuseWhere(!decimal.isFinite(), "size");
  return decimal;
}

function refuseWhere(broken: boolean, reason: NoValueReason): void {
  if (broken) throw new NoValue(reason);
}

function compare(a: Amount, b: Amount): number {
  return isExact(a) && isExact(b) ? a.compare(b) : toDecimal(a).cmp(toDecimal(b));
}

/** Decimals within this of a whole number are taken as that number by a rounding. */
const nearness = new Decimal("1e-24");

function rounding(way: "ceil" | "floor" | "round"): (amount: Amount) => Fraction {
  return (amount) => {
    if (isExact(amount)) return amount[way]();
    const nearest = amount.round();
    const whole = amount.minus(nearest).abs().lte(nearness) ? nearest : amount[way]();
    return exact(BigInt(whole.toFixed(0)));
  };
}

/** An amount as a decimal whose logarithm can be taken. */
function forLogarithm(amount: Amount): Decimal {
  refuseWhere(sign(amount) <= 0, "logarithm");
  return toDecimal(amount);
}

/** The numbers that formulas write, read once. */
const literals = new Map<string, Amount>();

/** Exact fractions as far as they reach, decimals of 40 digits beyond. */
export const exactArithmetic: Arithmetic<Amount> = {
  literal(text) {
    let known = literals.get(text);
    if (known === undefined) literals.set(text, (known = text === "pi" ? Decimal.acos(-1) : readDigits(text)));
    return known;
  },
  add: (a, b) => (isExact(a) && isExact(b) ? bounded(a.add(b)) : finite(toDecimal(a).add(toDecimal(b)))),
  subtract: (a, b) => (isExact(a) && isExact(b) ? bounded(a.sub(b)) : finite(toDecimal(a).sub(toDecimal(b)))),
  multiply: (a, b) => (isExact(a) && isExact(b) ? bounded(a.mul(b)) : finite(toDecimal(a).mul(toDecimal(b)))),
  divide(a, b) {
    refuseWhere(isZero(b), "division");
    return isExact(a) && isExact(b) ? bounded(a.div(b)) : finite(toDecimal(a).div(toDecimal(b)));
  },
  negate: (a) => a.neg(),
  power(base, exponent) {
    const whole = isExact(exponent) && exponent.isWhole();
    refuseWhere(sign(exponent) < 0 && isZero(base), "division");
    refuseWhere(!whole && sign(base) < 0, "root");
    return whole && isExact(base) ? bounded(base.pow(exponent.numerator)) : finite(power(toDecimal(base), toDecimal(exponent)));
  },
  compare,
  min: (a, b) => (compare(a, b) <= 0 ? a : b),
  max: (a, b) => (compare(a, b) >= 0 ? a : b),
  ceil: rounding("ceil"),
  floor: rounding("floor"),
  round: rounding("round"),
  sqrt(a) {
    refuseWhere(sign(a) < 0, "root");
    return toDecimal(a).sqrt();
  },
  ln: (a) => ln(forLogarithm(a)),
  log10: (a) => log10(forLogarithm(a)),
  exp: (a) => finite(exp(toDecimal(a))),
  sin: (a) => sin(toDecimal(a)),
  asin(a) {
    const decimal = toDecimal(a);
    refuseWhere(decimal.abs().gt(1), "arcsine");
    return asin(decimal);
  },
};

/** -1, 0 or 1. */
export function sign(amount: Amount): number {
  return isExact(amount) ? amount.sign() : amount.isZero() ? 0 : amount.s;
}

/** Whether the amount is nought. */
export function isZero(amount: Amount): boolean {
  return sign(amount) === 0;
}

/** Reads digits with an optional point and exponent, or a fraction: `1.5e3`, `1 5/8`; the text must have been checked. */
export function readDigits(text: string): Fraction {
  const [digits = "", power = "0"] = ("+-".includes(text.charAt(0)) ? text.slice(1) : text).split(/e/i);
  const [upper = "", lower] = digits.split("/");
  const [first = "", second] = upper.split(lower === undefined ? "." : " ");
  const size = lower === undefined ? decimalOf(first, second ?? "", Number(power)) : exact(second === undefined ? BigInt(first) : BigInt(first) * BigInt(lower) + BigInt(second), BigInt(lower));
  return text.startsWith("-") ? size.neg() : size;
}

function decimalOf(whole: string, decimals: string, power: number): Fraction {
  return exact(BigInt(whole + decimals)).mul(exact(10n).pow(BigInt(power - decimals.length)));
}

/** The exact value as text that reads back equal: `"3/8"`, `"12"`; a decimal of 30 digits where it is approximate. */
export function amountText(amount: Amount): string {
  return isExact(amount) ? amount.toString() : amount.toSignificantDigits(30).toFixed();
}
