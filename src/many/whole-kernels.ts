// One operation each on a block of whole numbers, which doubles hold exactly as long as they are small enough. The plan
// sees to that; here nothing is rounded but quotients. Adding 0 makes a nought of -0. The proof is in docs/guide/fast-counts.md.

/** Doubles hold every whole number up to 2^53; we stay a factor of two below. */
export const mostWhole = 2 ** 52;

/** What one rounding to a double takes at most, in parts of the result. */
export const unitRoundoff = 2 ** -53;

/** `a * b` */
export function multiplyWhole(out: Float64Array, a: Float64Array, b: Float64Array, count: number): void {
  for (let i = 0; i < count; i += 1) out[i] = (a[i] as number) * (b[i] as number) + 0;
}

/** `a * p + b * r` */
export function blendWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, count: number): void {
  for (let i = 0; i < count; i += 1) out[i] = (a[i] as number) * p + (b[i] as number) * r;
}

/** The smaller of `a * p` and `b * r` */
export function smallerWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, count: number): void {
  for (let i = 0; i < count; i += 1) out[i] = Math.min((a[i] as number) * p, (b[i] as number) * r);
}

/** The larger of `a * p` and `b * r` */
export function largerWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, count: number): void {
  for (let i = 0; i < count; i += 1) out[i] = Math.max((a[i] as number) * p, (b[i] as number) * r);
}

/** `(a * p) / (b * r)`, with its error: none where it comes out whole, for then it is exact. */
export function divideWhole(out: Float64Array, errors: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const quotient = ((a[i] as number) * p) / ((b[i] as number) * r);
    out[i] = quotient;
    errors[i] = Math.floor(quotient) === quotient && quotient - quotient === 0 ? 0 : Math.abs(quotient) * unitRoundoff;
  }
}

/** `(a * p) / (b * r)` alone */
export function quotientWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, count: number): void {
  for (let i = 0; i < count; i += 1) out[i] = ((a[i] as number) * p) / ((b[i] as number) * r) + 0;
}

/** `a * p / r` alone */
export function scaleWhole(out: Float64Array, a: Float64Array, p: number, r: number, count: number): void {
  for (let i = 0; i < count; i += 1) out[i] = ((a[i] as number) * p) / r + 0;
}

/** What is done with a row whose number is none, or too large for a whole one. */
export type TooLarge = (row: number) => void;

/** `(a * p) / (b * r)` rounded up: a quotient of whole numbers in doubles has the right whole part. Gives the largest size. */
export function ceilWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, tooLarge: TooLarge, count: number): number {
  for (let i = 0; i < count; i += 1) out[i] = Math.ceil(((a[i] as number) * p) / ((b[i] as number) * r)) + 0;
  return largest(out, tooLarge, count);
}

/** `(a * p) / (b * r)` rounded down */
export function floorWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, tooLarge: TooLarge, count: number): number {
  for (let i = 0; i < count; i += 1) out[i] = Math.floor(((a[i] as number) * p) / ((b[i] as number) * r));
  return largest(out, tooLarge, count);
}

/** `(a * p) / (b * r)` rounded to the nearest whole number, halves away from nought: `(2 |a| p + |b| r) / (2 |b| r)` rounded down */
export function roundWhole(out: Float64Array, a: Float64Array, p: number, b: Float64Array, r: number, tooLarge: TooLarge, count: number): number {
  for (let i = 0; i < count; i += 1) {
    const [x, y] = [a[i] as number, b[i] as number];
    const over = 2 * Math.abs(y) * r;
    const size = Math.floor((2 * Math.abs(x) * p + over / 2) / over);
    out[i] = x < 0 === y < 0 ? size : 0 - size;
  }
  return largest(out, tooLarge, count);
}

/** The largest size of a block; what is no number or too large becomes 1, once it is seen to. */
export function largest(out: Float64Array, tooLarge: TooLarge, count: number): number {
  let most = 0;
  for (let i = 0; i < count; i += 1) {
    const size = Math.abs(out[i] as number);
    if (size <= mostWhole) most = Math.max(most, size);
    else {
      tooLarge(i);
      out[i] = 1;
    }
  }
  return most;
}

/** Marks the rows whose number is not from `least` to `most`. */
export function markOutside(marks: Uint8Array, a: Float64Array, least: number, most: number, count: number): void {
  for (let i = 0; i < count; i += 1) {
    const value = a[i] as number;
    if (!(value >= least && value <= most)) marks[i] = 1;
  }
}

/** Marks the rows whose number is 0, and so divides nothing. */
export function markNought(marks: Uint8Array, a: Float64Array, count: number): void {
  for (let i = 0; i < count; i += 1) if (a[i] === 0) marks[i] = 1;
}
