// Our fractions beside fraction.js, a general-purpose library, on drawn numbers; and what the two do differently.
import fc from "fast-check";
import { Fraction as Reference } from "fraction.js";
import { describe, expect, it } from "vitest";
import { exact } from "../../src/core/amount.js";
import type { Fraction } from "../../src/core/fraction.js";

const whole = fc.oneof(fc.bigInt({ min: -1000n, max: 1000n }), fc.bigInt({ min: -(1n << 90n), max: 1n << 90n }), fc.bigInt({ min: -(1n << 300n), max: 1n << 300n }));
const part = fc.oneof(fc.bigInt({ min: 1n, max: 1000n }), fc.bigInt({ min: 1n, max: 1n << 300n }));
const pair = fc.tuple(whole, part);

const ours = ([above, below]: readonly [bigint, bigint]): Fraction => exact(above, below);
const theirs = ([above, below]: readonly [bigint, bigint]): Reference => new Reference(above, below);

describe("fractions beside fraction.js", () => {
  it("gives the same sums, differences, products, quotients and order", () => {
    fc.assert(
      fc.property(pair, pair, (a, b) => {
        for (const way of ["add", "sub", "mul"] as const) expect(ours(a)[way](ours(b)).toString()).toBe(theirs(a)[way](theirs(b)).toFraction());
        if (b[0] !== 0n) expect(ours(a).div(ours(b)).toString()).toBe(theirs(a).div(theirs(b)).toFraction());
        expect(ours(a).compare(ours(b))).toBe(theirs(a).compare(theirs(b)));
        expect(ours(a).equals(ours(b))).toBe(theirs(a).equals(theirs(b)));
      }),
      { numRuns: 300 },
    );
  });

  it("gives the same whole numbers, sizes, powers and parts", () => {
    fc.assert(
      fc.property(pair, fc.integer({ min: -6, max: 6 }), (a, power) => {
        const [mine, other] = [ours(a), theirs(a)];
        for (const way of ["floor", "ceil", "abs", "neg"] as const) expect(mine[way]().toString()).toBe(other[way]().toFraction());
        if (a[0] !== 0n || power >= 0) expect(mine.pow(BigInt(power)).toString()).toBe(other.pow(power).toFraction());
        expect([mine.numerator, mine.denominator]).toEqual([other.s * other.n, other.d]);
        expect(mine.isWhole()).toBe(other.d === 1n);
        expect(BigInt(mine.sign())).toBe(other.n === 0n ? 0n : other.s);
      }),
      { numRuns: 300 },
    );
  });

  it("keeps a sum of a thousand parts right, in lowest terms on the way", () => {
    let [sum, reference] = [exact(0n), new Reference(0n, 1n)];
    for (let below = 1n; below <= 1000n; below += 1n) {
      sum = sum.add(exact(1n, below));
      reference = reference.add(new Reference(1n, below));
    }
    expect(sum.toString()).toBe(reference.toFraction());
  });
});

describe("rounding halves", () => {
  // Away from nought, as a table of figures does by hand; fraction.js rounds -1/2 up to 0.
  it.each([
    [1n, 2n, "1"],
    [-1n, 2n, "-1"],
    [5n, 2n, "3"],
    [-5n, 2n, "-3"],
    [7n, 5n, "1"],
    [-7n, 5n, "-1"],
    [8n, 5n, "2"],
    [-8n, 5n, "-2"],
    [0n, 3n, "0"],
    // Parts not in lowest terms.
    [6n, 4n, "2"],
    [-6n, 4n, "-2"],
  ])("rounds %s/%s to %s", (above, below, expected) => {
    expect(exact(above, below).round().toString()).toBe(expected);
  });
});

it("tells what is beyond a size by its lowest terms", () => {
  const size = 1n << 4096n;
  expect(exact(size, 1n).exceeds(size)).toBe(false);
  expect(exact(size + 1n, 1n).exceeds(size)).toBe(true);
  expect(exact(-size - 1n, 1n).exceeds(size)).toBe(true);
  expect(exact(1n, size + 1n).exceeds(size)).toBe(true);
  expect(exact((size + 1n) * 3n, size + 1n).exceeds(size)).toBe(false);
});
