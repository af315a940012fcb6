// What lies at an edge of the engine: numbers too long to stay exact, errors that are no problems, words nearly right.
import { describe, expect, it } from "vitest";
import { times } from "../../src/core/quantity-arithmetic.js";
import { quantity } from "../../src/core/read-quantity.js";
import { basisText } from "../../src/core/basis.js";
import { amountText, Decimal, exact, exactArithmetic, isExact, toDecimal } from "../../src/core/amount.js";
import { calculation } from "../../src/core/calculation.js";
import { composed } from "../../src/core/composed.js";
import { checkDimension, DimensionError } from "../../src/core/dimensions.js";
import { FormulaError, formulaText, parseFormula } from "../../src/core/formula.js";
import { limitTexts } from "../../src/core/limit-texts.js";
import { choicesOf } from "../../src/core/prepared.js";
import { nearest } from "../../src/core/problems.js";
import { sentence } from "../../src/core/refusals.js";

const { add, multiply, power, sqrt, round, compare, asin } = exactArithmetic;

describe("an amount", () => {
  it("stays exact up to 4,096 bits above and below the line, and is a decimal beyond, on either side", () => {
    const most = 1n << 4096n;
    expect(isExact(multiply(exact(most), exact(1n)))).toBe(true);
    expect(isExact(multiply(exact(1n, most), exact(1n)))).toBe(true);
    expect(isExact(multiply(exact(most + 1n), exact(1n)))).toBe(false);
    expect(isExact(multiply(exact(1n, most + 1n), exact(1n)))).toBe(false);
    expect([-most, -most - 1n].map((below) => isExact(multiply(exact(below), exact(1n))))).toEqual([true, false]);
  });

  it("is a decimal as soon as one of two is", () => {
    const root = sqrt(exact(2n));
    expect(isExact(root)).toBe(false);
    for (const sum of [add(exact(1n), root), add(root, exact(1n))]) {
      expect(isExact(sum)).toBe(false);
      expect(toDecimal(sum).toFixed(12)).toBe("2.414213562373");
    }
    expect(toDecimal(power(root, exact(2n))).toFixed(30)).toBe(`2.${"0".repeat(30)}`);
    expect(isExact(power(root, exact(2n)))).toBe(false);
    expect(compare(round(power(root, exact(2n))), exact(2n))).toBe(0);
  });

  it("is compared exactly, and a whole number keeps all its digits as a decimal", () => {
    // 1/3 and 1/3 + 1/10^60 are alike in their first 59 digits.
    const third = exact(1n, 3n);
    const more = add(third, exact(1n, 10n ** 60n));
    expect([compare(third, more), compare(more, third)]).toEqual([-1, 1]);
    expect(toDecimal(exact(10n ** 50n + 1n)).toFixed()).toBe(`1${"0".repeat(49)}1`);
  });

  it("has 40 digits as a decimal, and is written with 30 of them; a small or large one without an exponent", () => {
    expect(toDecimal(exact(1n, 3n)).toFixed()).toBe(`0.${"3".repeat(40)}`);
    // The root of two, as it stands in every table: 1.41421356237309504880168872420969...
    expect(amountText(sqrt(exact(2n)))).toBe("1.41421356237309504880168872421");
    // A decimal's own writing goes over to an exponent of ten below 1e-39 and from 1e60.
    expect([new Decimal("1e-39"), new Decimal("1e-40"), new Decimal("1e59"), new Decimal("1e60")].map(String)).toEqual([`0.${"0".repeat(38)}1`, "1e-40", `1${"0".repeat(59)}`, "1e+60"]);
  });

  it("may be nought under a root and under a power, as long as that does not divide by it", () => {
    expect(compare(sqrt(exact(0n)), exact(0n))).toBe(0);
    expect(compare(power(exact(0n), exact(1n, 2n)), exact(0n))).toBe(0);
    // An empty product is one, that of no noughts too.
    expect(compare(power(exact(0n), exact(0n)), exact(1n))).toBe(0);
    expect(() => power(exact(0n), exact(-1n))).toThrow("division");
    expect(() => power(exact(-1n), exact(1n, 2n))).toThrow("root");
    expect(() => sqrt(exact(-1n))).toThrow("root");
  });
});

it("an arcsine is taken up to one and no further", () => {
  expect(toDecimal(asin(exact(1n))).toFixed(10)).toBe("1.5707963268");
  expect(toDecimal(asin(exact(-1n))).toFixed(10)).toBe("-1.5707963268");
  expect(() => asin(exact(1001n, 1000n))).toThrow("arcsine");
});

describe("a formula", () => {
  it("closes its brackets, and compares two things or more", () => {
    for (const text of ["(a", "(a + b", "min(a, b", "min(a)", "max(a)", "ceil(a", "x ^ (2", "x ^ (2 / 3"]) expect(() => parseFormula(text), text).toThrow(FormulaError);
  });

  it("gives no angle where a bare number is divided by one", () => {
    const names = new Map([["x", "ratio"], ["a", "angle"]] as const);
    expect(() => { checkDimension(parseFormula("x / a"), "angle", names); }).toThrow(DimensionError);
    for (const text of ["a / x", "a * x", "x * a"]) expect(() => { checkDimension(parseFormula(text), "angle", names); }, text).not.toThrow();
    expect(() => { checkDimension(parseFormula("a * a"), "angle", names); }).toThrow(DimensionError);
  });

  it("knows its functions and no others, and divides no exponent by nought", () => {
    for (const text of ["log(x)", "abs(x)", "x ^ (2 / 0)", "x ^ (2 / 0.0)"]) expect(() => parseFormula(text), text).toThrow(FormulaError);
    expect(formulaText(parseFormula("x ^ (2 / 1)"))).toBe("x ^ (2 / 1)");
  });

  it("tells the writer of its names which of them is raised", () => {
    expect(formulaText(parseFormula("a ^ 2 + b * a"), (name, raised) => (raised ? `[${name}]` : name))).toBe("[a] ^ 2 + b * a");
  });
});

describe("a definition", () => {
  const either = { is: "length", unit: "in", symbol: "w", says: "width", above: 0, either: "size" } as const;
  const field = calculation({
    id: "demo.field",
    title: "A field",
    given: { width: either, diameter: { ...either, symbol: "d", says: "diameter" }, length: { is: "length", unit: "in", symbol: "l", says: "length", above: 0 } },
    steps: { area: { is: "area", unit: "in2", symbol: "A", formula: { width: "width * length", diameter: "diameter * length" }, basis: { kind: "derived", says: "geometry" } } },
  });

  it("has a choice for each input of a pair, and none for the others", () => {
    expect(choicesOf(field.definition)).toEqual([["width"], ["diameter"]]);
  });

  it("shows steps that nobody assumed, and a basis only where there is one", () => {
    const { given, steps } = field.solve({ width: "2 in", length: "3 in" });
    expect(steps.map(({ assumed }) => assumed)).toEqual([false]);
    expect(given.map((line) => "basis" in line)).toEqual([false, false]);
    expect(steps.map((line) => "basis" in line)).toEqual([true]);
  });

  it("says a limit in words, a whole number last", () => {
    expect(limitTexts({ is: "count", atLeast: 1, below: 9, whole: true })).toEqual(["at least 1", "below 9", "a whole number"]);
    expect(limitTexts({ is: "count", atLeast: 1 })).toEqual(["at least 1"]);
  });
});

describe("an error that is no problem", () => {
  const tripping = (before: number, words: string): ReturnType<typeof composed> =>
    composed({
      id: "demo.tripping",
      title: "A run that trips",
      given: { count: { is: "count", symbol: "n", says: "pieces" } },
      run: (_given, work) => {
        for (let index = 0; index < before; index += 1) work.problem({ code: "refused", path: ["count"], given: "", wanted: "another" });
        throw new Error(words);
      },
    }) as never;

  it("is not told where a problem noted before explains it, be it one", () => {
    for (const before of [1, 2]) {
      const tried = tripping(before, "tripped").try({ count: 1 });
      expect(tried.ok ? [] : tried.problems.map(({ code, wanted }) => `${code} ${wanted}`)).toEqual(Array(before).fill("refused another"));
    }
  });

  it("is told by itself, with 200 letters of what it says", () => {
    const tried = tripping(0, "x".repeat(300)).try({ count: 1 });
    expect(tried.ok ? [] : tried.problems.map(({ code, wanted }) => `${code} ${wanted}`)).toEqual([`refused it could not be worked out (${"x".repeat(200)})`]);
  });
});

describe("a word nearly right", () => {
  it("may be two letters off, or a third of them where it is long", () => {
    expect(nearest("dpeth", ["depth"])).toBe("depth");
    expect(nearest("wdt", ["width"])).toBe("width");
    expect(nearest("wxyz", ["width"])).toBeUndefined();
    // One word within the other, where that can be but one; short words are in many.
    expect(nearest("relativeHumidity", ["airTemperature", "humidity"])).toBe("humidity");
    expect(nearest("thickness", ["unitThicknessAtCorner", "width"])).toBe("unitThicknessAtCorner");
    expect(nearest("unit", ["unitLength", "unitHeight"])).toBeUndefined();
    expect(nearest("wallAreaNet", ["are", "net"])).toBeUndefined();
    // unitThickness has 13 letters: four may be off.
    expect(nearest("unitThickxxxx", ["unitThickness"])).toBe("unitThickness");
    expect(nearest("unitThicxxxxx", ["unitThickness"])).toBeUndefined();
    // A key is looked at for 40 letters: a name of 40 is found behind any longer one.
    const long = "a".repeat(40);
    expect(nearest(`${long}${"b".repeat(60)}`, [long])).toBe(long);
    expect(nearest(`${"a".repeat(39)}bb`, ["a".repeat(38)])).toBe("a".repeat(38));
  });
});

describe("a basis in words", () => {
  const rule = { kind: "published", publisher: "Press", title: "Rule", edition: "2001", locator: "page 3" } as const;

  it("names who quotes it, and what it says, only where that is told", () => {
    expect(basisText(rule)).not.toMatch(/quoted|undefined/);
    expect(basisText({ ...rule, quotedBy: "a digest" })).toContain("as quoted by a digest");
    expect(basisText({ ...rule, says: "so much" })).toContain("(so much)");
  });
});

describe("a sentence", () => {
  it("puts values in where they stand, as they read: a quantity, one that was JSON on its way, names, sentences", () => {
    expect(sentence`at least ${quantity("length", "15 mil")}, for ${["jambs", "sills"]}`).toBe("at least 15 mil, for jambs, sills");
    expect(sentence`${3} of ${{ value: "15", unit: "mil" } as never}`).toBe("3 of 15 mil");
    const words = (text: string): never => ({ kind: "words", words: text, name: "demo.words" }) as never;
    expect(sentence`${[words("too long"), words("too wide")]}`).toBe("too long; too wide");
    expect(sentence`nothing put in`).toBe("nothing put in");
  });
});

describe("times", () => {
  it("takes a whole number or a count, which may be a part", () => {
    expect(times(quantity("length", "2 in"), 3).toString()).toBe("6 in");
    expect(times(quantity("length", "2 in"), quantity("count", 1.5)).toString()).toBe("3 in");
  });
});
