// Counts whose exact argument is a whole number: binary floats, and often decimals, come out one off. None may be wrong.
import { runInNewContext } from "node:vm";
import { describe, expect, it } from "vitest";
import { calculation } from "../../src/core/calculation.js";
import { isExactQuantity, type Quantity } from "../../src/core/quantity.js";
import { arithmetic } from "../../src/data/basis.js";
import { printed, vectorRows, vectors } from "../support/vectors.js";

const rows = [
  ...vectors("bags-waste-per-cover-"),
  ...vectors("bags-waste-multiplier-"),
  ...vectors("bed-mortar-bags-"),
  ...vectors("board-order-"),
  ...vectors("cement-blend-parts-"),
  ...vectors("coats-times-rate-"),
  ...vectors("courses-metric-"),
  ...vectors("dec-bed-per-bag-"),
  ...vectors("dec-dry-to-wet-pails-"),
  ...vectors("dec-film-pails-"),
  ...vectors("dec-joint-bags-"),
  ...vectors("dec-share-per-face-"),
  ...vectors("dec-units-per-area-"),
  ...vectors("fasteners-metric-floor-"),
  ...vectors("joint-bags-"),
  ...vectors("membrane-loss-"),
  ...vectors("mix-water-"),
  ...vectors("movement-joint-panels-"),
  ...vectors("tape-rolls-"),
  ...vectors("two-walls-sum-"),
].filter(({ formula }) => formula !== undefined);

/** The row's own formula as a calculation over bare numbers. */
function countOf({ inputs, formula = "" }: (typeof rows)[number]): Quantity<"count"> {
  const names = Object.keys(inputs);
  const given = Object.fromEntries(names.map((name) => [name, { is: "ratio", symbol: name, says: name }]));
  const count = { is: "count", symbol: "n", formula, basis: arithmetic };
  const run = calculation({ id: "demo.count", title: "Count", given, steps: { count } } as never) as unknown as (input: unknown) => { readonly count: Quantity<"count"> };
  return run(Object.fromEntries(names.map((name) => [name, printed(inputs[name] ?? "")?.number]))).count;
}

it("are all here", () => {
  expect(rows.map(({ id }) => id).sort()).toEqual(vectorRows.filter(({ file }) => file === "rounding-cases.json").map(({ id }) => id).sort());
});

describe("each comes out exactly", () => {
  it.each(rows.map((row) => [row.id, row.formula, row] as const))("%s: %s", (_id, _formula, row) => {
    const [expected = ""] = Object.values(row.expected);
    const count = countOf(row);
    expect(isExactQuantity(count)).toBe(true);
    expect(count.to().toString()).toBe(printed(expected)?.number);
  });

  it("and doubles get many of them wrong, so the cases do test something", () => {
    const wrong = rows.filter(({ inputs, formula = "", expected }) => {
      const doubles = Object.fromEntries(Object.entries(inputs).map(([name, text]) => [name, Number(printed(text)?.number)]));
      const value: unknown = runInNewContext(formula, { ceil: Math.ceil, floor: Math.floor, ...doubles });
      return String(value) !== printed(Object.values(expected)[0] ?? "")?.number;
    });
    expect(wrong.length).toBeGreaterThan(25);
  });
});
