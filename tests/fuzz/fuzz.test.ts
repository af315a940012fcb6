// The short run of tests/fuzz/run.mjs: some hundred inputs of strangers, the same each time.
import { expect, it } from "vitest";
import { trial } from "./trial.js";

const [first, count] = [1, 600];

it(`${String(count)} inputs break no promise, and some are answered`, async () => {
  const outcomes = await Promise.all(Array.from({ length: count }, async (_, index) => ({ seed: first + index, ...(await trial(first + index)) })));
  expect(outcomes.filter(({ broken }) => broken.length > 0).map(({ seed, what, broken }) => `seed ${String(seed)}, ${what}: ${broken.slice(0, 3).join("; ")}`)).toEqual([]);
  expect(outcomes.filter(({ answered }) => answered).length).toBeGreaterThan(count / 20);
});
