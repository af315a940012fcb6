// Steps flattened and run: who wins a min or a max, why a step has no value, and what is exact.
import { describe, expect, it } from "vitest";
import { type Amount, amountText, exact, exactArithmetic, isExact } from "../../src/core/amount.js";
import { parseFormula } from "../../src/core/formula.js";
import { compile, evaluate, governing, type Program, type Run, StepFailure } from "../../src/core/program.js";

const names = ["a", "b", "c"];

function program(steps: Readonly<Record<string, string>>): Program {
  return compile(names, Object.entries(steps).map(([name, text]) => ({ name, formula: parseFormula(text) })));
}

function run(of: Program, [a, b, c]: readonly [number, number, number]): Run<Amount> {
  return evaluate(of, [a, b, c].map((value) => exact(BigInt(value))), exactArithmetic);
}

/** The text of who won in the last step. */
function winner(steps: Readonly<Record<string, string>>, given: readonly [number, number, number]): string | undefined {
  const made = program(steps);
  const last = made.steps.at(-1);
  return last === undefined ? undefined : governing(last, run(made, given));
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

  it("what is compared has a name: a min of something worked out is refused", () => {
    expect(() => program({ least: "min(a + b, c)" })).toThrow("least: what min compares must have names; make a step of each");
  });
});

describe("a step that has no value names itself and says why", () => {
  it.each([
    ["a / (b - 2)", "it divides by 0"],
    ["(b - 2) ^ (-1)", "it divides by 0"],
    ["sqrt(a - b)", "it takes a root of a negative number"],
    ["(a - b) ^ 0.5", "it takes a root of a negative number"],
    ["(a - b) ^ (1 / 3)", "it takes a root of a negative number"],
    ["ln(a - 1)", "it takes the logarithm of a number that is not above 0"],
    ["log10(a - b)", "it takes the logarithm of a number that is not above 0"],
    ["asin(b)", "it takes the arcsine of a number beyond 1"],
    ["exp(exp(exp(exp(exp(a)))))", "the number gets too large"],
    ["ln(ln(a))", "it takes the logarithm of a number that is not above 0"],
  ])("%s: %s", (formula, reason) => {
    const made = program({ fine: "a + b", broken: formula, after: "broken + 1" });
    try {
      run(made, [1, 2, 3]);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(StepFailure);
      expect(error).toMatchObject({ step: "broken", message: reason });
    }
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
    const made = program({ x: formula });
    const found = run(made, [1, 2, 3]).values[made.steps[0]?.slot ?? -1] ?? exact(0n);
    expect([amountText(found), isExact(found)]).toEqual([value, isSo]);
  });

  it("a fraction of more than 4,096 bits goes on as a decimal of 40 digits", () => {
    const made = program({ x: "((c / 7) ^ 999) ^ 3", y: "((c / 7) ^ 999)" });
    const { values } = run(made, [1, 2, 3]);
    const [long, short] = made.steps.map(({ slot }) => values[slot] ?? exact(0n)) as [Amount, Amount];
    expect([isExact(long), isExact(short)]).toEqual([false, true]);
  });
});

it("each name, number and pi has one slot, and a step is worked out once", () => {
  const made = program({ x: "a * 2 + pi", y: "x * 2 + pi", z: "y" });
  expect(made.literals.map(({ text }) => text)).toEqual(["2", "pi"]);
  // Two operations each in x and y, none in z.
  expect(made.code).toHaveLength(4);
});

it("the check sees each step's value in order, and can stop the run", () => {
  const seen: string[] = [];
  const made = program({ x: "a + b", y: "x / (a - 1)" });
  expect(() => evaluate(made, [exact(1n), exact(2n), exact(3n)], exactArithmetic, ({ name }, value) => {
    seen.push(`${name} ${amountText(value)}`);
    throw new Error("stopped");
  })).toThrow("stopped");
  expect(seen).toEqual(["x 3"]);
});
