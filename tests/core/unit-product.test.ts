import { describe, expect, it } from "vitest";
import { toDecimal } from "../../src/core/amount.js";
import { problem } from "../../src/core/problems.js";
import { readQuantity } from "../../src/core/read-quantity.js";
import { productSize, productText, sameUnits, timesUnits, unitProduct } from "../../src/core/unit-product.js";
import { unitQuotient } from "../../src/core/units.js";
import { unitsIn } from "../../src/core/write-quantity.js";
import { calculation } from "../../src/core/calculation.js";

const inch = unitProduct("in");

describe("a product of units", () => {
  it("has none for bare numbers and angles, and the parts of a quotient", () => {
    expect([unitProduct("ratio"), unitProduct("count"), unitProduct("deg"), unitProduct("%")].map(({ size }) => size)).toEqual([0, 0, 0, 0]);
    expect(Object.fromEntries(unitProduct("psf"))).toEqual({ lbf: 1, ft: -2 });
    expect(Object.fromEntries(unitProduct("lb/ft3"))).toEqual({ lb: 1, ft: -3 });
    expect(Object.fromEntries(unitProduct("gal"))).toEqual({ gal: 1 });
    expect([unitQuotient("gal"), unitQuotient("mph"), unitQuotient("ft")]).toEqual([undefined, undefined, undefined]);
    expect(unitQuotient("psf")).toBe("lbf/ft2");
  });

  it("loses what is divided by itself", () => {
    expect(timesUnits(inch, inch, -1).size).toBe(0);
    expect(productText(timesUnits(inch, inch))).toBe("in2");
    expect(productText(timesUnits(unitProduct("lb/ft3"), unitProduct("ft"), 2))).toBe("lb/ft");
  });

  it("has a size, also to the power of a part", () => {
    // A foot is 0.3048 m, its root 0.55208694.
    expect(toDecimal(productSize(new Map([["ft", 0.5]]))).toFixed(8)).toBe("0.55208695");
    expect(toDecimal(productSize(new Map([["ft", 2]]))).toString()).toBe("0.09290304");
  });

  it("is the same only with the same units to the same powers", () => {
    const square = timesUnits(inch, inch);
    expect(sameUnits(inch, unitProduct("in"))).toBe(true);
    for (const [a, b] of [[inch, unitProduct("ft")], [inch, square], [square, inch], [inch, new Map()], [new Map(), inch]] as const) expect(sameUnits(a, b)).toBe(false);
  });
});

it("units of a system have those that both use among them", () => {
  expect(unitsIn("length", "si")).toEqual(expect.arrayContaining(["mm", "m"]));
  expect(unitsIn("length", "si")).not.toContain("in");
  expect(unitsIn("time", "us")).toContain("h");
  expect(unitsIn("time", "si")).toContain("h");
});

it("feet and inches are a length and nothing else", () => {
  const read = readQuantity("area", "5 ft 6 in", { path: [] });
  expect("code" in read ? read.code : "read").toBe("unknownUnit");
});

it("a refusal tells what was given, where something was", () => {
  const refused = { code: "refused", path: ["n"], wanted: "another" } as const;
  expect(problem({ ...refused, given: "7" }).message).toBe("n: 7: another");
  expect(problem({ ...refused, given: "" }).message).toBe("n: another");
});

it("a name that is none is told by its first 80 letters", () => {
  const one = calculation({ id: "demo.one", title: "One", given: { n: { is: "count", symbol: "n", says: "count" } }, steps: { m: { is: "count", symbol: "m", formula: "n", basis: { kind: "derived", says: "arithmetic" } } } });
  const tried = one.try({ n: 1, ["x".repeat(200)]: 1 });
  expect(tried.ok ? [] : tried.problems.map(({ path }) => path)).toEqual([["x".repeat(80)]]);
});
