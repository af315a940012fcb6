// Functions on a block of doubles with error bounds. No standard says how near these come in doubles; they are taken to
// be within 16 units of roundoff, several times what the engines in use keep. The proof is in docs/guide/fast-counts.md.
import type { Bounded } from "./real-kernels.js";
import { unitRoundoff } from "./whole-kernels.js";

/** The functions that are worked out here. */
export type Curve = "sqrt" | "ln" | "log10" | "exp" | "sin" | "asin";

const slack = 16 * unitRoundoff;

/** The value of a function, and how far it moves where its argument moves by so much; NaN where that cannot be told. */
type Moved = (a: number, by: number) => number;

const curves: Readonly<Record<Curve, readonly [value: (a: number) => number, moved: Moved, floor: number]>> = {
  // |sqrt(a) - sqrt(b)| = |a - b| / (sqrt(a) + sqrt(b))
  sqrt: [Math.sqrt, (a, by) => (by === 0 && a >= 0 ? 0 : a - by >= 0 ? by / Math.sqrt(a) : NaN), 0],
  // The mean value theorem, with the steepest slope of the range.
  ln: [Math.log, (a, by) => (a - by > 0 ? by / (a - by) : NaN), 1],
  log10: [Math.log10, (a, by) => (a - by > 0 ? by / (a - by) : NaN), 1],
  exp: [Math.exp, (a, by) => (by < 2 ** -10 ? Math.exp(a) * by * (1 + 2 * by) : NaN), 0],
  sin: [Math.sin, (a, by) => (Math.abs(a) < 4 ? by : NaN), 0],
  asin: [Math.asin, (a, by) => (Math.abs(a) + by < 1 - 2 ** -20 ? by / Math.sqrt(1 - (Math.abs(a) + by) ** 2) : NaN), 0],
};

/** A function of `a` */
export function curveReal(curve: Curve, { values, errors }: Bounded, a: Bounded, count: number): void {
  const [valueOf, moved, least] = curves[curve];
  for (let i = 0; i < count; i += 1) {
    const [x, ex] = [a.values[i] as number, a.errors[i] as number];
    const value = valueOf(x);
    values[i] = value;
    errors[i] = (moved(x, ex) + Math.max(Math.abs(value), least) * slack) * (1 + 2 ** -20) + 1e-300;
  }
}

/** `a` to a power that is no whole number: `|a^p - b^p|` is at most `a^p * |p| * |a - b| / a`, and a little where a and b are near. */
export function powerReal({ values, errors }: Bounded, a: Bounded, power: number, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const [x, ex] = [a.values[i] as number, a.errors[i] as number];
    const value = x ** power;
    const near = ex < x * 2 ** -20 && Math.abs(power) <= 64;
    values[i] = value;
    // The power itself is rounded to a double, which moves the result by its logarithm.
    errors[i] = near ? Math.abs(value) * ((Math.abs(power) * ex) / x + slack + 2 * unitRoundoff * Math.abs(power * Math.log(x))) * (1 + 2 ** -10) + 1e-300 : NaN;
  }
}
