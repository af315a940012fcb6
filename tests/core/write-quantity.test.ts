// How lengths are written on a tape, and numbers in decimals; what is written is read back.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { sum } from "../../src/core/quantity-arithmetic.js";
import { quantity } from "../../src/core/read-quantity.js";
import { type Writing, writeQuantity } from "../../src/core/write-quantity.js";

describe("on the tape", () => {
  it.each([
    ["66.375 in", { as: "feetInches" }, "5 ft 6-3/8 in", true],
    ["66.375 in", { as: "tape" }, "66-3/8 in", true],
    ["60 in", { as: "feetInches" }, "5 ft", true],
    ["60.5 in", { as: "feetInches" }, "5 ft 0-1/2 in", true],
    ["-66.375 in", { as: "feetInches" }, "-5 ft 6-3/8 in", true],
    ["3/8 in", { as: "feetInches" }, "3/8 in", true],
    ["-3/8 in", { as: "tape" }, "-3/8 in", true],
    ["0 in", { as: "feetInches" }, "0 in", true],
    // 25 mm is 250/254 in = 15.748/16 in: nearest 16/16.
    ["25 mm", { as: "tape" }, "1 in", false],
    ["25 mm", { as: "tape", tapeParts: 64 }, "63/64 in", false],
    // 1/32 in lies half way between 0 and 1/16: halves go away from zero.
    ["1/32 in", { as: "tape" }, "1/16 in", false],
    ["-1/32 in", { as: "tape" }, "-1/16 in", false],
    ["1/64 in", { as: "tape" }, "0 in", false],
    ["-1/64 in", { as: "tape" }, "0 in", false],
    ["1/32 in", { as: "tape", tapeParts: 32 }, "1/32 in", true],
    ["3/16 in", { as: "tape", tapeParts: 8 }, "1/4 in", false],
    // 11-31/32 in rounds up into the next foot.
    ["11.97 in", { as: "feetInches" }, "1 ft", false],
    ["2/3 ft", { as: "tape" }, "8 in", true],
  ] satisfies readonly (readonly [string, Writing, string, boolean])[])("%s %j is %s", (text, writing, written, isExact) => {
    expect(writeQuantity(quantity("length", text as "1 in"), writing)).toMatchObject({ text: written, exact: isExact });
  });

  it("is refused for what is no length", () => {
    expect(() => writeQuantity(quantity("area", "1 ft2"), { as: "tape" })).toThrow(RangeError);
  });
});

describe("in decimals", () => {
  it.each([
    ["1/3 in", {}, "0.333333 in", false],
    ["1/3 in", { digits: 2 }, "0.33 in", false],
    ["1/3 in", { places: 3 }, "0.333 in", false],
    ["3/8 in", { places: 4 }, "0.3750 in", true],
    ["3/8 in", { digits: 2 }, "0.38 in", false],
    ["3/8 in", { unit: "mm" }, "9.525 mm", true],
    ["66.375 in", { unit: "mm", digits: 4 }, "1686 mm", false],
    ["12345678 in", {}, "12345700 in", false],
    ["0.000000125 in", {}, "0.000000125 in", true],
    ["-0.004 in", { places: 2 }, "0.00 in", false],
    // 2.5 and 3.5 of the last place: halves go away from zero, never to even.
    ["0.125 in", { places: 2 }, "0.13 in", false],
    ["-0.125 in", { places: 2 }, "-0.13 in", false],
  ] satisfies readonly (readonly [string, Writing, string, boolean])[])("%s %j is %s", (text, writing, written, isExact) => {
    expect(writeQuantity(quantity("length", text as "1 in"), writing)).toMatchObject({ text: written, exact: isExact });
  });

  it.each([
    ["ratio", "0.5", "0.5", ""],
    ["ratio", "50 %", "50 %", "%"],
    ["count", "12", "12", ""],
    ["volume", "3 fl oz", "3 fl oz", "fl oz"],
    ["temperatureDifference", "9 degF", "9 degF", "degF"],
  ] as const)("%s %s is %s", (dimension, given, text, unit) => {
    expect(writeQuantity(quantity(dimension, given as never))).toMatchObject({ text, unit });
  });
});

describe("what is written on the tape is read back", () => {
  const lengths = fc.tuple(fc.integer({ min: -1_000_000, max: 1_000_000 }), fc.integer({ min: 1, max: 997 }));

  it.each([["feetInches", 8], ["feetInches", 16], ["tape", 16], ["tape", 32], ["feetInches", 64]] as const)("%s to 1/%d in, within half of that", (as, tapeParts) => {
    fc.assert(
      fc.property(lengths, ([above, below]) => {
        const length = quantity("length", { value: `${String(above)}/${String(below)}`, unit: "in" });
        const written = writeQuantity(length, { as, tapeParts });
        const back = quantity("length", written.text as "1 in");
        // Worked in whole numbers: |back - above/below| <= 1/(2 parts), all times below * parts.
        const marks = BigInt(back.to("in").times(tapeParts).toFixed());
        const off = marks * BigInt(below) - BigInt(above) * BigInt(tapeParts);
        expect(2n * (off < 0n ? -off : off)).toBeLessThanOrEqual(BigInt(below));
        expect(written.exact).toBe(off === 0n);
      }),
      { numRuns: 2000 },
    );
  });

  it("feet and inches never show 12 in or more, nor a fraction that can be reduced", () => {
    fc.assert(
      fc.property(lengths, ([above, below]) => {
        const { text } = writeQuantity(quantity("length", { value: `${String(above)}/${String(below)}`, unit: "in" }), { as: "feetInches" });
        const [, inches, over, under] = /(?:^-?|ft )(\d+)?-?(?:(\d+)\/(\d+))? in$/.exec(text) ?? [];
        if (text.includes("ft ")) expect(Number(inches ?? 0)).toBeLessThan(12);
        if (over !== undefined) expect([Number(over) % 2, Number(under) % 2]).toEqual([1, 0]);
      }),
    );
  });

  it("heights on a story rod are rounded each by itself, so errors do not add up", () => {
    // 24 courses of 2-2/3 in are 64 in.
    const step = quantity("length", "2-2/3 in");
    const heights = Array.from({ length: 24 }, (_, index) => writeQuantity(sum(Array.from({ length: index + 1 }, () => step)), { as: "tape" }).text);
    expect(heights.slice(0, 3)).toEqual(["2-11/16 in", "5-5/16 in", "8 in"]);
    expect(heights[23]).toBe("64 in");
  });
});
