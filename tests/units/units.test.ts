// convert-units works from our table: it must give what the engine gives, and what the definitions of the units say.
import { describe, expect, it } from "vitest";
import { exact, toDecimal } from "../../src/core/amount.js";
import { dimensions, type DimensionName } from "../../src/core/dimensions.js";
import { fromBase, toBase } from "../../src/core/unit-scale.js";
import { quantity, readQuantity } from "../../src/core/read-quantity.js";
import { unitsOf } from "../../src/core/units.js";
import { converter } from "../../src/units/converter.js";
import { bestUnit, inUnit, unitList, unitName } from "../../src/units/index.js";

const names = Object.keys(dimensions) as DimensionName[];

describe("convert-units over the table", () => {
  it.each(names)("%s: every pair converts as the engine does", (dimension) => {
    for (const from of unitsOf(dimension)) {
      for (const to of unitsOf(dimension)) {
        for (const amount of [exact(1n), exact(0n), exact(-7n, 3n)]) {
          // It takes 0 for nothing given; the wrapper's nought is an object, and so is kept.
          const theirs = converter(amount).from(from).to(to);
          expect(toDecimal(theirs).minus(toDecimal(fromBase(toBase(amount, from), to))).abs().lte("1e-36"), `${from} to ${to}`).toBe(true);
        }
      }
    }
  });

  it("refuses what is not of one dimension", () => {
    expect(() => converter(exact(1n)).from("ft").to("gal")).toThrow(/incompatible/i);
  });
});

describe("names of units", () => {
  it.each([
    ["in", "inch", "inches"],
    ["ft2", "square foot", "square feet"],
    ["lb/ft3", "pound per cubic foot", "pounds per cubic foot"],
    ["/ft2", "per square foot", "per square foot"],
    ["ft2/gal", "square foot per gallon", "square feet per gallon"],
    ["lb/ft2/h", "pound per square foot per hour", "pounds per square foot per hour"],
    ["/degF", "per degree Fahrenheit", "per degree Fahrenheit"],
    ["km/h", "kilometre per hour", "kilometres per hour"],
    ["ng/s/m2/Pa", "nanogram per second per square metre per pascal", "nanograms per second per square metre per pascal"],
  ] as const)("%s", (code, singular, plural) => {
    expect(unitName(code)).toEqual({ singular, plural });
  });

  it("every unit has a name, and its plural is read back as that unit, but for those that are only written by their symbols", () => {
    const notRead = unitList().filter(({ symbol, dimension, plural, unit }) => {
      const found = readQuantity(dimension, `2 ${plural}`, { path: [] });
      return symbol !== "" && !("unit" in found && found.unit === unit);
    });
    expect(unitList().filter(({ symbol, plural }) => symbol !== "" && plural === "")).toEqual([]);
    expect(notRead.map(({ unit }) => unit)).toEqual(["ng/s/m2/Pa"]);
  });
});

describe("menus and other units", () => {
  it("lists the units of a dimension in both systems", () => {
    expect(unitList("area").map(({ unit, system }) => `${unit} ${system}`)).toEqual(["in2 us", "ft2 us", "yd2 us", "mm2 si", "cm2 si", "m2 si"]);
    expect(unitList().length).toBe(names.flatMap((name) => unitsOf(name)).length);
  });

  it("shows a quantity in another unit, exactly", () => {
    expect(inUnit(quantity("length", "1/3 ft"), "mil").toJSON()).toEqual({ value: "4000", unit: "mil" });
  });

  it.each([
    ["length", "0.5 ft", undefined, "6 in"],
    ["length", "30 in", undefined, "2.5 ft"],
    ["length", "1500 mm", undefined, "1.5 m"],
    ["length", "1 ft", "si", "30.48 cm"],
    ["length", "-0.5 ft", undefined, "-6 in"],
    ["volume", "0.75 gal", undefined, "3 qt"],
    ["time", "90 min", undefined, "1.5 h"],
    ["temperature", "50 degF", undefined, "50 degF"],
    ["length", "0 in", undefined, "0 in"],
  ] as const)("%s %s", (dimension, given, system, best) => {
    expect(bestUnit(quantity(dimension as DimensionName, given as never), system).toString()).toBe(best);
  });
});
