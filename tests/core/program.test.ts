// Formulas worked out: who wins a min or a max, why a formula has no value, and what is exact.
import { describe, expect, it } from "vitest";
import { type Amount, amountText, exact, exactArithmetic, isExact, NoValue } from "../../src/core/amount.js";
import { parseFormula } from "../../src/core/formula.js";
import { evaluate, governing } from "../../src/core/program.js";

/** The amounts of a, b and c, and of each step in turn. */
function run(steps: Readonly<Record<string, string>>, [a, b, c]: readonly [number, number, number] = [1, 2, 3]): ReadonlyMap<string, Amount> {
  const amounts = new Map(Object.entries({ a, b, c }).map(([name, value]): [string, Amount] => [name, exact(BigInt(value))]));
  for (const [name, text] of Object.entries(steps)) amounts.set(name, evaluate(parseFormula(text), amounts, exactArithmetic));
  return amounts;
}

/** The text of who won in the last step. */
function winner(steps: Readonly<Record<string, string>>, given: readonly [number, number, number]): string | undefined {
  const [last, text] = Object.entries(steps).at(-1) ?? ["", ""];
  const amounts = run(steps, given);
  return governing(parseFormula(text), amounts, amounts.get(last) ?? exact(0n));
}

describe("which governs", () => {
  it.each([
    [{ x: "min(a, b)" }, [1, 2, 3], "a"],
    [{ x: "min(a, b)" }, [2, 1, 3], "b"],
    [{ x: "max(a, b)" }, [1, 2, 3], "b"],
    [{ x: "min(a, b, c)" }, [3, 2, 1], "c"],
    [{ x: "min(a, b, c)" }, [3, 1, 2], "b"],
    [{ x: "max(a, b, c, 10)" }, [1, 2, 3], "10"],
    // Of equals the first is named.
    [{ x: "max(a, b)" }, [2, 2, 3], "a"],
    [{ x: "min(b, a)" }, [2, 2, 3], "b"],
    // A step that is a min itself, and wins, is named as it stands.
    [{ x: "min(a, b)", y: "min(x, c)" }, [1, 2, 3], "x"],
    [{ x: "min(a, b)", y: "min(c, x)" }, [1, 2, 3], "x"],
    [{ x: "min(a, b)", y: "max(x, c, a)" }, [5, 4, 3], "a"],
    [{ x: "min(a, b)", y: "max(c, x)" }, [5, 4, 3], "x"],
    [{ x: "min(a, b)", y: "x", z: "max(y, c)" }, [5, 4, 3], "y"],
    [{ x: "a + b", y: "min(x, c)" }, [1, 1, 3], "x"],
  ] satisfies readonly (readonly [Record<string, string>, [number, number, number], string])[])("%j with %j: %s", (steps, given, expected) => {
    expect(winner(steps, given)).toBe(expected);
  });

  it("is told only where the whole step is a min or a max", () => {
    expect(winner({ x: "2 * min(a, b)" }, [1, 2, 3])).toBeUndefined();
    expect(winner({ x: "a" }, [1, 2, 3])).toBeUndefined();
  });

  it("only a name or a number is told", () => {
    expect(winner({ x: "min(a + b, c + c)" }, [1, 2, 3])).toBeUndefined();
    expect(winner({ x: "min(a + b, c)" }, [1, 2, 1])).toBe("c");
  });
});

describe("a formula that has no value says why", () => {
  it.each([
    ["a / (b - 2)", "division"],
    ["(b - 2) ^ (-1)", "division"],
    ["sqrt(a - b)", "root"],
    ["(a - b) ^ 0.5", "root"],
    ["(a - b) ^ (1 / 3)", "root"],
    ["ln(a - 1)", "logarithm"],
    ["log10(a - b)", "logarithm"],
    ["asin(b)", "arcsine"],
    ["exp(exp(exp(exp(exp(a)))))", "size"],
    ["ln(ln(a))", "logarithm"],
  ])("%s: %s", (formula, reason) => {
    expect(() => run({ broken: formula })).toThrow(NoValue);
    expect(() => run({ broken: formula })).toThrow(reason);
  });
});

describe("what is exact stays so", () => {
  it.each([
    ["a / c + a / c + a / c", "1", true],
    ["(a / c) ^ (-3)", "27", true],
    ["ceil(a / c * c)", "1", true],
    ["floor(-a / 2)", "-1", true],
    ["ceil(-a / 2)", "0", true],
    ["round(-a / 2)", "-1", true],
    ["round(a / 2)", "1", true],
    ["min(a, b) / max(b, c)", "1/3", true],
    ["b ^ 100 / b ^ 99", "2", true],
    // A round-up of an approximate number is exact again, and takes the whole number it lies at.
    ["ceil(sqrt(b) * sqrt(b))", "2", true],
    ["floor(sqrt(b) * sqrt(b))", "2", true],
    ["ceil(exp(ln(c)))", "3", true],
    ["sqrt(b + b)", "2", false],
    ["c * pi / pi", "3", false],
  ])("%s is %s", (formula, value, isSo) => {
    const found = run({ x: formula }).get("x") ?? exact(0n);
    expect([amountText(found), isExact(found)]).toEqual([value, isSo]);
  });

  it("a fraction of more than 4,096 bits goes on as a decimal of 40 digits", () => {
    const amounts = run({ long: "((c / 7) ^ 999) ^ 3", short: "((c / 7) ^ 999)" });
    expect(["long", "short"].map((name) => isExact(amounts.get(name) ?? exact(0n)))).toEqual([false, true]);
  });
});
