// One operation each on a block of doubles with a bound on the error of each. The proof is in docs/guide/fast-counts.md.
import { unitRoundoff } from "./whole-kernels.js";

/** Numbers of a block, and how far each may be from the true one. */
export interface Bounded {
  readonly values: Float64Array;
  readonly errors: Float64Array;
}

/** The bound is itself worked out in doubles; this makes up for that. */
const grow = 1 + 2 ** -40;
/** What underflow can take from a result or from its bound, and much more. */
const tiny = 1e-300;

/** `a * b` */
export function multiplyReal({ values, errors }: Bounded, a: Bounded, b: Bounded, count: number): void {
  const [left, leftErrors, right, rightErrors] = [a.values, a.errors, b.values, b.errors];
  for (let i = 0; i < count; i += 1) {
    const [x, y, ex, ey] = [left[i] as number, right[i] as number, leftErrors[i] as number, rightErrors[i] as number];
    const product = x * y;
    values[i] = product;
    errors[i] = (Math.abs(x) * ey + Math.abs(y) * ex + ex * ey + Math.abs(product) * unitRoundoff) * grow + tiny;
  }
}

/** `a * p + b * r`, where p and r are known to within `inexact` of themselves */
export function blendReal({ values, errors }: Bounded, a: Bounded, p: number, b: Bounded, r: number, inexact: number, count: number): void {
  const [left, leftErrors, right, rightErrors] = [a.values, a.errors, b.values, b.errors];
  const [sizeP, sizeR] = [Math.abs(p), Math.abs(r)];
  for (let i = 0; i < count; i += 1) {
    const x = (left[i] as number) * p;
    const y = (right[i] as number) * r;
    const sum = x + y;
    values[i] = sum;
    errors[i] = ((leftErrors[i] as number) * sizeP + (rightErrors[i] as number) * sizeR + (Math.abs(x) + Math.abs(y)) * inexact + Math.abs(sum) * unitRoundoff) * grow + tiny;
  }
}

/** `a / b`; NaN where b may be 0 */
export function divideReal({ values, errors }: Bounded, a: Bounded, b: Bounded, count: number): void {
  const [left, leftErrors, right, rightErrors] = [a.values, a.errors, b.values, b.errors];
  for (let i = 0; i < count; i += 1) {
    const [y, ey] = [right[i] as number, rightErrors[i] as number];
    const quotient = (left[i] as number) / y;
    const room = Math.abs(y) - ey;
    values[i] = quotient;
    errors[i] = room > 0 ? (((leftErrors[i] as number) + Math.abs(quotient) * ey) / room + Math.abs(quotient) * unitRoundoff) * grow + tiny : NaN;
  }
}

/** The smaller or the larger of `a * p` and `b * r`; neither moves by more than the larger error. */
export function extremeReal({ values, errors }: Bounded, a: Bounded, p: number, b: Bounded, r: number, inexact: number, pick: 1 | -1, count: number): void {
  const [left, leftErrors, right, rightErrors] = [a.values, a.errors, b.values, b.errors];
  for (let i = 0; i < count; i += 1) {
    const x = (left[i] as number) * p;
    const y = (right[i] as number) * r;
    values[i] = pick > 0 ? Math.max(x, y) : Math.min(x, y);
    errors[i] = Math.max((leftErrors[i] as number) * Math.abs(p) + Math.abs(x) * inexact, (rightErrors[i] as number) * Math.abs(r) + Math.abs(y) * inexact) * grow + tiny;
  }
}

/** How a number is rounded to a whole one. */
export type Rounding = "ceil" | "floor" | "round";

/** Halves away from nought; a double less its whole part is exact. */
function roundHalfAway(value: number): number {
  const size = Math.abs(value);
  const below = Math.floor(size);
  return Math.sign(value) * (size - below >= 0.5 ? below + 1 : below);
}

const roundings: Readonly<Record<Rounding, (value: number) => number>> = { ceil: Math.ceil, floor: Math.floor, round: roundHalfAway };

/** The decimals of the engine count as whole within 1e-24 of a whole number. */
const nearness = 1e-23;

/** `a` rounded where both ends of its range agree; elsewhere by `resolve`, which works it out exactly. */
export function roundReal(way: Rounding, out: Float64Array, a: Bounded, resolve: (row: number) => number, count: number): void {
  const [left, leftErrors, rounded] = [a.values, a.errors, roundings[way]];
  for (let i = 0; i < count; i += 1) {
    const value = left[i] as number;
    const error = leftErrors[i] as number;
    // The difference and the sum are rounded too: one more unit in the last place.
    const reach = error === 0 ? 0 : error + Math.abs(value) * (2 * unitRoundoff) + nearness;
    const low = rounded(value - reach);
    out[i] = low === rounded(value + reach) ? low + 0 : resolve(i);
  }
}

/** Calls for each row of which it cannot be told that all of its range is within the limits; they may be met where `met`. */
export function eachNear(a: Bounded, least: number, most: number, met: boolean, count: number, doubtful: (row: number) => void): void {
  const { values, errors } = a;
  for (let i = 0; i < count; i += 1) {
    const value = values[i] as number;
    const error = errors[i] as number;
    const reach = error + Math.abs(value) * (2 * unitRoundoff);
    const within = value - reach > least && value + reach < most;
    if (!within && !(met && error === 0 && value >= least && value <= most)) doubtful(i);
  }
}

/** What of an answer may be off, in parts of it: half of what we promise. */
const tolerance = 5e-13;

/** Calls for each row whose number is not good to 12 digits, or is none. */
export function eachLoose(a: Bounded, count: number, loose: (row: number) => void): void {
  const { values, errors } = a;
  for (let i = 0; i < count; i += 1) {
    const value = values[i] as number;
    if (!((errors[i] as number) <= Math.abs(value) * tolerance + 1e-290 && value - value === 0)) loose(i);
  }
}
