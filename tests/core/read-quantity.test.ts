// What people write for a quantity, and what is refused; expected values are worked out from the definitions of the units.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Decimal } from "../../src/core/amount.js";
import { dimensions, type DimensionName } from "../../src/core/dimensions.js";
import { InputError, type ProblemCode } from "../../src/core/problems.js";
import { compare } from "../../src/core/quantity-arithmetic.js";
import { isExactQuantity, isQuantity, type Quantity } from "../../src/core/quantity.js";
import { quantity, readQuantity } from "../../src/core/read-quantity.js";
import { unitsOf, unitSymbol } from "../../src/core/units.js";

const names = Object.keys(dimensions) as DimensionName[];
const read = (dimension: DimensionName, given: unknown): ReturnType<typeof readQuantity> => readQuantity(dimension, given, { path: ["x"] });

/** The value in a unit, or the code of what is wrong. */
function readIn(dimension: DimensionName, given: unknown, unit?: string): string {
  const found = read(dimension, given);
  return isQuantity(found) ? found.to(unit as never).toString() : (found as { code: ProblemCode }).code;
}

describe("lengths", () => {
  it.each([
    ["18 mil", "0.018"],
    ["3/8 in", "0.375"],
    ["1-5/8 in", "1.625"],
    ["1 5/8 in", "1.625"],
    ["-1-5/8 in", "-1.625"],
    ["−3/8 in", "-0.375"],
    ["+3/8 in", "0.375"],
    ["5 ft 6-3/8 in", "66.375"],
    ["5 ft 6 3/8 in", "66.375"],
    ["5' 6-3/8\"", "66.375"],
    ["5'6-3/8\"", "66.375"],
    ["5 ft 0-1/2 in", "60.5"],
    ["5'-6-3/8\"", "66.375"],
    ["5′ 6-3/8″", "66.375"],
    // As a telephone writes them.
    ["5’ 6⅜”", "66.375"],
    ["½ in", "0.5"],
    ["5½ in", "5.5"],
    ["-5½”", "-5.5"],
    ["5 feet 6.375 inches", "66.375"],
    ["5ft 6in", "66"],
    ["-5 ft 6 in", "-66"],
    ["-0 ft 6 in", "-6"],
    ["0 ft 6 in", "6"],
    ["5 ft", "60"],
    ["5'", "60"],
    ["5-1/2'", "66"],
    ["6-3/8\"", "6.375"],
    ["18in", "18"],
    ["18 inches", "18"],
    ["1.5e3 mil", "1.5"],
    ["25.4mm", "1"],
    ["  25.4   mm  ", "1"],
    ["25.4 mm", "1"],
    [".5 in", "0.5"],
    ["5. in", "5"],
    ["1.27e1 mm", "0.5"],
    ["1E1 in", "10"],
    ["0.3048 m", "12"],
    ["0 in", "0"],
    ["-0 in", "0"],
  ])("%s is %s in", (text, inches) => {
    expect(readIn("length", text, "in")).toBe(inches);
  });
});

describe("the other dimensions", () => {
  it.each([
    ["ratio", "55 %", "ratio", "0.55"],
    ["ratio", "55%", "ratio", "0.55"],
    ["ratio", "55 percent", "ratio", "0.55"],
    ["ratio", "0.55", "ratio", "0.55"],
    ["ratio", 0.55, "ratio", "0.55"],
    ["ratio", "1/4", "ratio", "0.25"],
    ["count", 12, "count", "12"],
    ["count", "12", "count", "12"],
    ["count", "12 each", "count", "12"],
    ["count", 1e21, "count", "1000000000000000000000"],
    ["count", 1e-7, "count", "0.0000001"],
    ["pressure", "15 psf", "psf", "15"],
    ["temperature", "70 degF", "degF", "70"],
    ["temperature", "70 °F", "degF", "70"],
    ["temperature", "70F", "degF", "70"],
    ["temperature", "-40 degC", "degF", "-40"],
    ["area", "312 sq ft", "ft2", "312"],
    ["area", "312 sq. ft.", "ft2", "312"],
    ["area", "312 ft²", "ft2", "312"],
    ["area", "312ft2", "ft2", "312"],
    ["countPerArea", "3 /ft2", "/ft2", "3"],
    ["countPerArea", "3/ft2", "/ft2", "3"],
    ["countPerArea", "3 per ft2", "/ft2", "3"],
    ["spreadingRate", "250 ft2 per gal", "ft2/gal", "250"],
    ["angle", "60 deg", "deg", "60"],
    ["angle", "60°", "deg", "60"],
    ["time", "1/2 h", "min", "30"],
    ["density", "94 pounds per cubic foot", "lb/ft3", "94"],
    ["speed", "20 feet per minute", "ft/min", "20"],
    ["speed", "115 miles per hour", "mph", "115"],
    ["spreadingRate", "50 square feet per gallon", "ft2/gal", "50"],
    ["spreadingRate", "2 square meters per liter", "m2/L", "2"],
    ["pressure", "15 pounds per square foot", "psf", "15"],
    ["lineLoad", "40 pounds per foot", "lbf/ft", "40"],
    ["evaporation", "0.2 lb per sq ft per hr", "lb/ft2/h", "0.2"],
    ["expansion", "5e-6 per deg F", "/degF", "0.000005"],
    ["countPerArea", "3 per square foot", "/ft2", "3"],
    ["temperature", "50 deg F", "degF", "50"],
    ["temperature", "50 degrees Fahrenheit", "degF", "50"],
    ["temperature", "10 degrees Celsius", "degC", "10"],
    ["temperatureDifference", "5 deg F", "degF", "5"],
    ["temperature", "300 kelvin", "K", "300"],
    ["pressure", "500 pascals", "Pa", "500"],
    ["permeance", "10 perms", "perm", "10"],
    ["length", "40 lf", "ft", "40"],
    ["count", "12 pcs", "count", "12"],
  ] as const)("%s: %j in %s is %s", (dimension, given, unit, value) => {
    expect(readIn(dimension, given, unit)).toBe(value);
  });

  it.each([
    [{ value: 12, unit: "in" }, "12"],
    [{ value: "3/8", unit: "in" }, "0.375"],
    [{ value: new Decimal("0.1"), unit: "ft" }, "1.2"],
    [Object.assign(Object.create(null) as object, { value: "1", unit: "ft" }), "12"],
    [quantity("length", "1 ft"), "12"],
    // A quantity of another copy of the package tells of itself by its dimension and what it writes.
    [{ dimension: "length", unit: "ft", toJSON: () => ({ value: "1/3", unit: "ft" }) }, "4"],
  ])("%j is read as a length", (given, inches) => {
    expect(readIn("length", given, "in")).toBe(inches);
  });

  it("a double is read by its shortest text", () => {
    for (const double of [0.1, 0.2, 0.3, 1.1, 1e-8, 0.1234567891, 123456.789]) expect(readIn("ratio", double, "ratio")).toBe(new Decimal(double).toString());
  });
});

describe("what is refused, by its code", () => {
  it.each([
    ["time", "5-7 min", "notANumber"],
    ["time", "5 - 7 min", "notANumber"],
    ["area", "1,250 ft2", "comma"],
    ["length", "1,25 m", "comma"],
    ["length", "1.250,5 m", "notANumber"],
    ["length", "1 250 mm", "notANumber"],
    ["length", "", "empty"],
    ["length", "   ", "empty"],
    ["length", "NaN", "notFinite"],
    ["length", "NaN in", "notFinite"],
    ["length", "Infinity in", "notFinite"],
    ["length", "-Infinity in", "notFinite"],
    ["ratio", Number.NaN, "notFinite"],
    ["ratio", Number.POSITIVE_INFINITY, "notFinite"],
    ["length", { value: Number.NaN, unit: "in" }, "notFinite"],
    ["length", { value: new Decimal(Infinity), unit: "in" }, "notFinite"],
    ["length", "1e999 in", "tooLarge"],
    ["length", "1e-999 in", "tooLarge"],
    ["length", "1e99999999999999999999 in", "tooLarge"],
    ["count", 1e300, "tooLarge"],
    ["count", 5e-324, "tooLarge"],
    ["length", "3/0 in", "notANumber"],
    ["length", "1-3/0 in", "notANumber"],
    ["length", "5 ft 3/0 in", "notANumber"],
    ["length", "5 ft -6 in", "notANumber"],
    ["length", "5 ft 1,250 in", "notANumber"],
    ["length", "5 ft 6 7 in", "notANumber"],
    ["length", "3/8/2 in", "notANumber"],
    ["length", "1-5/8.5 in", "notANumber"],
    ["length", "--5 in", "notANumber"],
    ["length", "in", "notANumber"],
    ["length", "about 5 in", "notANumber"],
    ["length", "١٢ in", "notANumber"],
    ["length", "0x10 in", "unknownUnit"],
    ["length", "5 furlongs", "unknownUnit"],
    ["length", "5 constructor", "unknownUnit"],
    ["length", "5 ft2", "wrongDimension"],
    ["length", "3/4 gal", "wrongDimension"],
    ["length", quantity("area", "1 ft2"), "wrongDimension"],
    ["length", "5", "noUnit"],
    ["length", 5, "noUnit"],
    ["length", "3/8", "noUnit"],
    ["length", { value: 5 }, "wrongKind"],
    ["length", { value: 5, unit: 1 }, "noUnit"],
    ["length", { value: null, unit: "in" }, "wrongKind"],
    ["length", { value: [5], unit: "in" }, "wrongKind"],
    ["length", {}, "wrongKind"],
    ["length", null, "wrongKind"],
    ["length", undefined, "wrongKind"],
    ["length", true, "wrongKind"],
    ["length", 5n, "wrongKind"],
    ["length", Symbol("5 in"), "wrongKind"],
    ["length", ["5 in"], "wrongKind"],
    ["length", () => "5 in", "wrongKind"],
    ["length", JSON.parse('{ "__proto__": { "value": 5, "unit": "in" } }'), "wrongKind"],
    ["length", { dimension: "area", toJSON: () => ({ value: "1", unit: "ft" }) }, "wrongKind"],
    ["length", { dimension: "length", toJSON: () => "1 ft" }, "wrongKind"],
    ["length", "1".repeat(10_000), "tooLong"],
    ["length", " ".repeat(10_000), "tooLong"],
    ["length", { value: "1".repeat(10_000), unit: "in" }, "tooLong"],
  ] satisfies readonly (readonly [DimensionName, unknown, ProblemCode])[])("%s: %o is %s", (dimension, given, code) => {
    expect(readIn(dimension, given)).toBe(code);
  });

  it("an object that writes itself for ever is refused, not followed", () => {
    const endless: object = { dimension: "length", toJSON: () => endless };
    expect(readIn("length", endless)).toBe("wrongKind");
  });
});

describe("what a refusal says", () => {
  const messageOf = (dimension: DimensionName, given: unknown): string => {
    try {
      quantity(dimension, given as never);
    } catch (error) {
      if (error instanceof InputError) return error.problems[0]?.message ?? "";
    }
    return "read";
  };

  it.each([
    ["length", "3/8", /^input: "3\/8" has no unit; write a number and one of mil, in, ft/],
    ["length", "3/4 gal", /"3\/4 gal" is a volume; write a number and one of/],
    ["length", { value: 3, unit: "furlong" }, /"3 furlong" has a unit that is not known/],
    ["area", "1,250 ft2", /"1,250 ft2" has a comma in its number; write 1250 or 1\.250; write/],
    ["area", "12,5 m2", /write 125 or 12\.5; write/],
    ["area", "1,234,567 ft2", /in its number; write 1234567; write/],
    ["area", "1,250.5 ft2", /in its number; write 1250\.5; write/],
    ["ratio", "ten", /"ten" has no number that can be read; write a number or a percentage, such as 0\.1 or "10 %"/],
    ["length", `${"1".repeat(100)} in`, /^input: "1{37}…" is too long/],
    ["length", "5\n\u0000in in", /^input: "5 in in" has a unit that is not known/],
    ["length", quantity("area", "1 ft2"), /1 ft2 is an area; write/],
  ] satisfies readonly (readonly [DimensionName, unknown, RegExp])[])("%s: %o", (dimension, given, message) => {
    expect(messageOf(dimension, given)).toMatch(message);
  });

  it("an InputError holds what `quantity` refused", () => {
    expect(() => quantity("length", "3/8" as never)).toThrow(InputError);
  });
});

describe("whatever is given", () => {
  const texts = fc.oneof(
    fc.string({ maxLength: 200, unit: "binary" }),
    fc.string({ maxLength: 90, unit: fc.constantFrom(...Array.from("0123456789.,-+/eE '\"′″ftinmld2³%°")) }),
    fc.tuple(fc.string({ unit: fc.constantFrom(...Array.from("0123456789./- ")), maxLength: 12 }), fc.constantFrom(...names.flatMap((name) => unitsOf(name)).map(unitSymbol))).map((parts) => parts.join(" ")),
  );

  it("a text is read or refused, and never throws", () => {
    fc.assert(
      fc.property(fc.constantFrom(...names), fc.oneof(texts, fc.double(), fc.jsonValue()), (dimension, given) => {
        const found = read(dimension, given);
        expect(isQuantity(found) || ("code" in found && "wanted" in found)).toBe(true);
      }),
      { numRuns: 5000 },
    );
  });

  it("long texts of one kind do not take long", () => {
    const start = performance.now();
    for (const piece of ["1", "1/", "1-", "1 ", "'", "' ", "ft ", "per ", "sq ", " /", "1ft", "(", "e", "1e", "²"]) {
      const text = piece.repeat(2400 / piece.length);
      for (const name of names) {
        read(name, text.slice(0, 80));
        read(name, { value: text, unit: "in" });
        read(name, { value: 1, unit: text });
      }
    }
    expect(performance.now() - start).toBeLessThan(3000);
  });
});

describe("what a quantity writes of itself", () => {
  const numerals = fc.oneof(
    fc.tuple(fc.bigInt({ min: -(10n ** 20n), max: 10n ** 20n }), fc.bigInt({ min: 1n, max: 10n ** 15n })).map(([above, below]) => `${above < 0n ? "-" : ""}${(above < 0n ? -above : above).toString()}/${below.toString()}`),
    fc.tuple(fc.integer({ min: -99999, max: 99999 }), fc.nat({ max: 999999 })).map(([whole, part]) => `${String(whole)}.${String(part).padStart(6, "0")}`),
    fc.integer({ min: -30, max: 30 }).map((exponent) => `1.25e${String(exponent)}`),
  );
  const anyUnit = fc.constantFrom(...names.flatMap((name) => unitsOf(name).map((unit) => [name, unitSymbol(unit)] as const)));
  const again = (given: Quantity): Quantity => {
    const found = readQuantity(given.dimension, JSON.parse(JSON.stringify(given)) as unknown, { path: [] });
    if (!isQuantity(found)) throw new Error(`${JSON.stringify(given)} is not read back`);
    return found;
  };

  it("reads back equal, exactly, with its unit", () => {
    fc.assert(
      fc.property(numerals, anyUnit, (value, [name, unit]) => {
        const given = readQuantity(name, { value, unit }, { path: [] });
        if (!isQuantity(given)) throw new Error(`${value} ${unit} is not read`);
        const back = again(given);
        expect(back.unit).toBe(given.unit);
        if (isExactQuantity(given)) expect(compare(back, given)).toBe(0);
        // Degrees go through pi, so they come back to 30 digits.
        else expect(back.to().minus(given.to()).abs().lte(given.to().abs().times("1e-29"))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it("reads back equal where the fraction is long", () => {
    // 1/3^400 needs 191 digits below.
    const given = quantity("length", { value: `1/${(3n ** 400n).toString()}`, unit: "in" });
    expect(compare(again(given), given)).toBe(0);
  });
});
