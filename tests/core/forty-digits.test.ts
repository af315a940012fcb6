// The functions to 40 digits against decimal.js, which works at 80 digits and is then rounded to 40.
import { Decimal as Reference } from "decimal.js";
import { describe, expect, test } from "vitest";
import { Decimal } from "../../src/core/decimal.js";
import { asin, exp, ln, log10, power, sin } from "../../src/core/forty-digits.js";
import { drawFrom } from "../support/random.js";

const Wide = Reference.clone({ defaults: true, precision: 80, toExpNeg: -40, toExpPos: 60 });
const functions = { exp, ln, log10, power, sin, asin };

/** What decimal.js says, of the same numbers. */
const reference: Record<keyof typeof functions, (x: Reference, y: Reference) => Reference> = {
  exp: (x) => x.exp(),
  ln: (x) => x.ln(),
  log10: (x) => x.log(10),
  power: (x, y) => x.pow(y),
  sin: (x) => x.sin(),
  asin: (x) => x.asin(),
};

function compare(name: keyof typeof functions, x: string, y = "1"): void {
  const found = functions[name](new Decimal(x), new Decimal(y)).toString();
  expect(found, `${name} of ${x}, ${y}`).toBe(reference[name](new Wide(x), new Wide(y)).toSignificantDigits(40).toString());
}

const draw = drawFrom(40);
/** A number with so many digits after the point, from nought to `most`. */
const number = (most: number, digits: number): string => `${String(draw.whole(0, most - 1))}.${Array.from({ length: digits }, () => String(draw.whole(0, 9))).join("")}`;
const digits = (): number => draw.one([1, 2, 4, 20, 37]);
const signed = (text: string): string => `${draw.one(["", "-"])}${text}`;
const times = 150;

describe("as the nearest decimal of 40 digits", () => {
  test.each([
    ["exp", () => [signed(number(99, digits()))]],
    ["exp", () => [signed(`0.0${number(9, digits()).replace(".", "")}`)]],
    ["ln", () => [`${number(3, digits())}1`]],
    ["ln", () => [`${number(100000, digits())}1`]],
    ["log10", () => [`${number(3, digits())}1`]],
    ["log10", () => [`${number(100000, digits())}1`]],
    ["power", () => [`${number(2, digits())}1`, signed(`${number(9, digits())}1`)]],
    ["power", () => [`${number(4000, digits())}1`, draw.one(["2.5", "0.18", "5.2559", "0.5", "-1.5"])]],
    ["sin", () => [signed(number(99, digits()))]],
    ["sin", () => [number(2, digits())]],
    ["asin", () => [signed(`0.${number(9, digits()).replace(".", "")}`)]],
  ] as readonly (readonly [keyof typeof functions, () => readonly [x: string, y?: string]])[])("%s", (name, numbers) => {
    for (let time = 0; time < times; time += 1) compare(name, ...numbers());
  });
});

describe("where few digits are left, or the function is no ordinary one", () => {
  const nearOne = `1.${"0".repeat(38)}1`;
  test.each([
    // Nought and what is next to it.
    ["exp", "0"], ["exp", "1e-30"], ["exp", "-1e-30"], ["exp", "5e-40"], ["sin", "0"], ["sin", "1e-30"], ["sin", "-0.00000001"], ["asin", "0"], ["asin", "1e-12"], ["asin", "-1e-30"],
    // The logarithm of what is nearly one.
    ["ln", "1"], ["ln", nearOne], ["ln", `0.${"9".repeat(40)}`], ["ln", "1.00000001"], ["log10", "1"], ["log10", nearOne],
    // A sine near nought, far out; an arcsine near its end.
    ["sin", "3.141592653589793238462643383279502884197"], ["sin", "12345.678"], ["sin", "-99.99"], ["asin", "1"], ["asin", "-1"], ["asin", "0.999"], ["asin", "0.9989999"], ["asin", `0.${"9".repeat(40)}`],
    // Large and small.
    ["exp", "99.99"], ["exp", "-99.99"], ["exp", "100"], ["exp", "1000.5"], ["ln", "1e90"], ["ln", "1e91"], ["ln", "1e-90"], ["ln", "9.9e-91"], ["ln", "1e300"], ["log10", "1e-200"],
  ] as const)("%s of %s", (name, x) => {
    compare(name, x);
  });

  test.each([
    ["32", "4", "2.5"], ["0.125", "4", "-1.5"], ["1", "1", "0.3"], ["0", "0", "2.5"], ["1024", "2", "10"], ["-8", "-2", "3"], ["1.1", "1.21", "0.5"],
  ])("%s is %s to the power of %s", (result, base, exponent) => {
    expect(power(new Decimal(base), new Decimal(exponent)).toString()).toBe(result);
  });

  test.each([["3", "1000"], ["-2", "0.01"], ["80", "1e80"]])("%s is the logarithm of %s to ten", (result, x) => {
    expect(log10(new Decimal(x)).toString()).toBe(result);
  });

  test.each([
    ["power", "1e60", "9.9"], ["power", "1e-60", "9.9"], ["power", "2", "123.4"], ["power", "2", "1e-25"],
  ] as const)("%s of %s, %s", (name, x, y) => {
    compare(name, x, y);
  });

  // The root is a hair below the middle of two decimals; decimal.js decides.
  test("what cannot be told is what decimal.js says at 40 digits", () => {
    expect(power(new Decimal(nearOne), new Decimal("0.5")).toString()).toBe(new Decimal(nearOne).pow("0.5").toString());
  });

  // (3e13 + 5) cubed has 41 digits, the last of which is 5: 27e39 + 135e26 + 225e13 + 125. It is the square to the power of 1.5.
  test("what is half way between two decimals goes away from nought", () => {
    const root = 30_000_000_000_005n;
    const cube = 27n * 10n ** 39n + 135n * 10n ** 26n + 225n * 10n ** 13n + 125n;
    expect(cube).toBe(root ** 3n);
    expect(power(new Decimal(String(root * root)), new Decimal("1.5")).toFixed()).toBe(String(cube + 5n));
  });
});
