// Sums and differences of quantities, exact, and only of what goes together.
import { describe, expect, it } from "vitest";
import { compare, isNought, subtract, sum, times } from "../../src/core/quantity-arithmetic.js";
import { isExactQuantity, type Quantity } from "../../src/core/quantity.js";
import { quantity } from "../../src/core/read-quantity.js";

const length = (text: string): Quantity<"length"> => quantity("length", text as "1 ft");

describe("exactly", () => {
  it("a third of a foot three times is a foot", () => {
    const third = length("1/3 ft");
    expect(compare(sum([third, third, third]), length("1 ft"))).toBe(0);
    expect(compare(times(third, 3), length("304.8 mm"))).toBe(0);
    expect(isNought(subtract(times(third, 3), length("12 in")))).toBe(true);
  });

  it("a sum is shown in the unit of the first", () => {
    expect(sum([length("1 ft"), length("25.4 mm")]).toString()).toBe("1.083333333 ft");
    expect(subtract(length("25.4 mm"), length("1/2 in")).toString()).toBe("12.7 mm");
  });

  it("a long record stays exact", () => {
    const record = Array.from({ length: 500 }, (_, index) => length(`${String(index + 1)}/${String(index + 2)} in`));
    expect(isExactQuantity(sum(record))).toBe(true);
  });

  it("compare orders", () => {
    const sorted = [length("1 ft"), length("1 mm"), length("1 in")].sort(compare);
    expect(sorted.map(String)).toEqual(["1 mm", "1 in", "1 ft"]);
    expect(compare(quantity("temperature", "40 degF"), quantity("temperature", "40 degC"))).toBeLessThan(0);
  });
});

describe("what does not go together", () => {
  const area = quantity("area", "1 ft2");
  const air = quantity("temperature", "40 degF");

  it("nothing cannot be added", () => {
    expect(() => sum([])).toThrow(RangeError);
  });

  it("a length and an area, which the types alone would take together", () => {
    expect(() => sum<"length" | "area">([length("1 ft"), area])).toThrow("area does not go with length");
    expect(() => subtract<"length" | "area">(length("1 ft"), area)).toThrow(RangeError);
    expect(() => compare<"length" | "area">(length("1 ft"), area)).toThrow(RangeError);
  });

  it("temperatures, which are points on a scale", () => {
    expect(() => sum([air, air] as never)).toThrow("a temperature is a point on a scale");
    expect(() => subtract(air as never, air as never)).toThrow("temperature differences");
    expect(() => times(air as never, 2)).toThrow(RangeError);
  });

  it.each([1.5, Number.NaN, Infinity])("times %d", (by) => {
    expect(() => times(length("1 ft"), by)).toThrow(RangeError);
  });
});
