// A sum that is exact for as long as it can be: what comes late is added before the first amount that is not exact.
import { expect, it } from "vitest";
import { exact, exactArithmetic, isExact } from "../../../src/core/amount.js";
import { ExactSum } from "../../../src/takeoff/rows/exact-sum.js";

const third = exact(1n, 3n);
const rootOfTwo = exactArithmetic.sqrt(exact(2n));

/** A sum with two thirds still out, and how often they were asked for. */
function withTwoThirdsOut(): { readonly sum: ExactSum; readonly asked: () => number } {
  const sum = new ExactSum();
  let asked = 0;
  for (let share = 0; share < 2; share += 1) {
    sum.expect(() => {
      asked += 1;
      if (asked <= 2) sum.add(third);
    });
  }
  return { sum, asked: () => asked };
}

it("leaves out what is late while all is exact", () => {
  const { sum, asked } = withTwoThirdsOut();
  sum.add(third);
  sum.add(exact(5n));
  expect([String(sum.amount), sum.isExact, asked()]).toEqual(["16/3", true, 0]);
});

it("takes what is late in before what is not exact, and once", () => {
  const { sum, asked } = withTwoThirdsOut();
  sum.add(third);
  sum.add(rootOfTwo);
  sum.add(rootOfTwo);
  // 1/3 + 2/3 = 1 without a rounding; after a root the thirds would be decimals.
  expect(exactArithmetic.compare(sum.amount, exactArithmetic.add(exactArithmetic.add(exact(1n), rootOfTwo), rootOfTwo))).toBe(0);
  expect([isExact(sum.amount), sum.isExact, asked()]).toEqual([false, false, 2]);
});
