import { Decimal } from "./decimal.js";

// Functions to 40 digits in whole numbers over 2^224, some ten times as fast as decimal.js. They give the nearest decimal or
// leave it to decimal.js: what is beyond their reach, and what lies so near the middle of two decimals that the digits known
// do not tell which is nearer.

/** Binary places after the point. */
const places = 224n;
const one = 1n << places;
/** All functions are right to 2^28 of these, in parts of one or of themselves; what is smaller than this has too few digits then. */
const smallest = 1n << 202n;

const times = (a: bigint, b: bigint): bigint => (a * b) >> places;
const tenTo = (power: number): bigint => 10n ** BigInt(Math.max(0, power));
/** A double to 45 binary places. */
const fromDouble = (number: number): bigint => BigInt(Math.round(number * 2 ** 45)) << (places - 45n);

/** A decimal as a whole number and a power of ten. */
function partsOf({ d, e, s }: Decimal): readonly [whole: bigint, power: number] {
  let whole = 0n;
  for (const seven of d) whole = whole * 10_000_000n + BigInt(seven);
  return [s < 0 ? -whole : whole, e - 7 * (d.length - 1) - String(d[0]).length + 1];
}

function toFixedPoint(decimal: Decimal): bigint {
  const [whole, power] = partsOf(decimal);
  return (whole * tenTo(power) * one) / tenTo(-power);
}

/** The nearest decimal of 40 digits to `value * 2 ** twos`; nothing where it cannot be told. */
function nearest(value: bigint, twos = 0): Decimal | undefined {
  const size = value < 0n ? -value : value;
  if (size < smallest) return undefined;
  const power = 58 - Math.floor((Math.log2(Number(size)) - Number(places) + twos) * Math.log10(2));
  const digits = String((size * tenTo(power)) >> (places - BigInt(twos)));
  return /^(49{9}|50{9})/.test(digits.slice(40)) ? undefined : new Decimal(`${value < 0n ? "-" : ""}${digits}e-${String(power)}`).toSignificantDigits(40);
}

interface Constants {
  readonly pi: bigint;
  readonly two: bigint;
  readonly ten: bigint;
}
let known: Constants | undefined;

/** Pi, and the logarithms of two and ten. */
function constants(): Constants {
  if (known !== undefined) return known;
  const Wide = Decimal.clone({ precision: 80 });
  return (known = { pi: toFixedPoint(Wide.acos(-1)), two: toFixedPoint(Wide.ln(2)), ten: toFixedPoint(Wide.ln(10)) });
}

/** `e ** x` as a number near one and a power of two. */
function exponential(x: bigint): readonly [value: bigint, twos: bigint] {
  const { two } = constants();
  const twos = (2n * x + two) / (2n * two);
  // Halved 12 times, few terms of the series do; squared as often, it is what it was.
  const part = (x - twos * two) >> 12n;
  let sum = one;
  for (let [term, n] = [part, 2n]; term !== 0n; n += 1n) {
    sum += term;
    term = times(term, part) / n;
  }
  for (let squared = 0; squared < 12; squared += 1) sum = times(sum, sum);
  return [sum, twos];
}

/** The logarithm: that of doubles, and of what is then left of the number, which is nearly one. */
function logarithm(x: Decimal): bigint | undefined {
  if (Math.abs(x.e) > 90) return undefined;
  const near = fromDouble(Math.log(x.toNumber()));
  const [whole, power] = partsOf(x);
  const [value, twos] = exponential(-near);
  const left = ((whole * tenTo(power) * value) << (twos > 0n ? twos : 0n)) / (tenTo(-power) << (twos < 0n ? -twos : 0n)) - one;
  let sum = near;
  for (let [term, n] = [left, 1n]; n < 6n; n += 1n) {
    sum += term / n;
    term = -times(term, left);
  }
  return sum;
}

/** A sine from its first term on, a cosine after one. */
function series(angle: bigint, first: bigint, from: bigint): bigint {
  const square = times(angle, angle);
  let sum = 0n;
  for (let [term, n] = [first, from]; term !== 0n; n += 2n) {
    sum += term;
    term = -times(term, square) / (n * (n + 1n));
  }
  return sum;
}
const sine = (angle: bigint): bigint => series(angle, angle, 2n);
const cosine = (angle: bigint): bigint => series(angle, one, 1n);

/** Whether the size of a number is in this range, in powers of ten of its first digit. */
const isBetween = ({ e }: Decimal, least: number, most: number): boolean => e >= least && e <= most;

/** `e ** x`. */
export function exp(x: Decimal): Decimal {
  return (isBetween(x, -20, 1) ? raised(toFixedPoint(x)) : undefined) ?? x.exp();
}

function raised(power: bigint): Decimal | undefined {
  const [value, twos] = exponential(power);
  return nearest(value, Number(twos));
}

/** The natural logarithm of a number above nought. */
export function ln(x: Decimal): Decimal {
  const found = logarithm(x);
  return (found === undefined ? undefined : nearest(found)) ?? x.ln();
}

/** The logarithm to ten of a number above nought. */
export function log10(x: Decimal): Decimal {
  const found = logarithm(x);
  return (found === undefined ? undefined : nearest((found << places) / constants().ten)) ?? x.log(10);
}

/** A power; what is raised is not below nought, or the exponent is whole. */
export function power(base: Decimal, exponent: Decimal): Decimal {
  const found = base.s < 0 || base.isZero() || exponent.isInteger() || !isBetween(exponent, -20, 0) ? undefined : logarithm(base);
  const product = found === undefined ? undefined : times(found, toFixedPoint(exponent));
  // To e ** 100 and e ** -100.
  return (product !== undefined && product < 100n * one && product > -100n * one ? raised(product) : undefined) ?? base.pow(exponent);
}

/** The sine of an angle in radians. */
export function sin(x: Decimal): Decimal {
  if (!isBetween(x, -20, 1)) return x.sin();
  const angle = toFixedPoint(x);
  const { pi } = constants();
  const quarters = (4n * angle + pi) / (2n * pi);
  const rest = angle - (quarters * pi) / 2n;
  const turned = quarters % 2n === 0n ? sine(rest) : cosine(rest);
  return nearest(((quarters % 4n) + 4n) % 4n < 2n ? turned : -turned) ?? x.sin();
}

/** The angle in radians that has this sine, which is from -1 to 1. */
export function asin(x: Decimal): Decimal {
  const number = x.toNumber();
  if (Math.abs(number) > 0.999) return x.asin();
  const [wanted, near] = [toFixedPoint(x), fromDouble(Math.asin(number))];
  const square = one * one - wanted * wanted;
  // Each turn doubles the bits that are right: 44 to 352.
  let root = fromDouble(Math.sqrt(1 - number * number));
  for (let turn = 0; turn < 3; turn += 1) root = (root + square / root) / 2n;
  // The sine of the difference between the angle and the one that is near.
  const left = times(wanted, cosine(near)) - times(root, sine(near));
  const cube = times(times(left, left), left);
  return nearest(near + left + cube / 6n + (3n * times(cube, times(left, left))) / 40n) ?? x.asin();
}
