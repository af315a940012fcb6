// A calculation as it is called: answers, every problem in one error, what the solution tells.
import { describe, expect, it } from "vitest";
import { calculation } from "../../src/core/calculation.js";
import { InputError, type Problem } from "../../src/core/problems.js";
import { isQuantity } from "../../src/core/quantity.js";
import { quantity } from "../../src/core/read-quantity.js";
import { byHand, measured, order, tank, usual } from "../support/demo.js";

// 4 ft x 3 ft x 1 ft, half filled: 12 ft2, 6 ft3, 374.4 lb; 6 ft3 = 10368 in3, in pails of 231 in3: 44.88, so 45.
const given = { width: "4 ft", length: "3 ft", filled: "50 %", pail: "1 gal" } as const;

const problemsOf = (run: { readonly try: (input: unknown) => { readonly ok: boolean } }, input: unknown): readonly Problem[] => {
  const tried = run.try(input) as ReturnType<typeof tank.try>;
  return tried.ok ? [] : tried.problems;
};
const codes = (problems: readonly Problem[]): readonly string[] => problems.map(({ code, path }) => `${code} ${path.join(".")}`);

describe("answers", () => {
  it("every step under its own name, in its own unit", () => {
    const answers = tank(given);
    expect(Object.fromEntries(Object.entries(answers).map(([name, value]) => [name, value.toString()]))).toEqual({
      floor: "12 ft2", volume: "6 ft3", mass: "374.4 lb", pails: "45", shortSide: "3 ft", diagonal: "5 ft",
    });
  });

  it("a text, an object and a quantity are one", () => {
    const [text, object, read] = [tank(given), tank({ ...given, width: { value: 48, unit: "in" } }), tank({ ...given, width: quantity("length", "1.2192 m") })];
    expect([object, read].map((one) => JSON.stringify(one.mass))).toEqual([JSON.stringify(text.mass), JSON.stringify(text.mass)]);
  });

  it("metric in, metric out; a mixture is shown as in the United States", () => {
    const metric = { width: "2 m", length: "3 m", depth: "1 m", filled: 1, pail: "10 L" } as const;
    expect(Object.values(tank(metric)).map(({ unit }) => unit)).toEqual(["m2", "L", "kg", "count", "m", "m"]);
    expect(Object.values(tank({ ...metric, pail: "1 gal" })).map(({ unit }) => unit)).toEqual(["ft2", "ft3", "lb", "count", "ft", "ft"]);
    // The default of 1 ft was not given, so it does not count.
    expect(tank({ width: "2 m", length: "3 m", filled: 1, pail: "10 L" }).floor.toString()).toBe("6 m2");
  });

  it("one of a pair, and the formula that goes with it", () => {
    // 70 x 1.30 = 91; 70 / 0.70 = 100.
    expect(order({ net: 70, waste: "30 %" }).toOrder.toString()).toBe("91");
    expect(order({ net: 70, lossShare: "30 %" }).toOrder.toString()).toBe("100");
    expect(order({ net: 70, lossShare: "30 %", waste: undefined }).toOrder.toString()).toBe("100");
  });
});

describe("everything that is wrong comes back together", () => {
  it("what holds its values in a row and not under names is told as that, not as an object with all missing", () => {
    for (const list of [[given], new Map(Object.entries(given)), new URLSearchParams(given)]) {
      expect(problemsOf(tank, list).map(({ message }) => message)).toEqual(["input: a list cannot be read; give an object with width, length, depth, filled, pail"]);
    }
  });

  it("missing, misspelt, unreadable and out of its limits, each with its path", () => {
    const problems = problemsOf(tank, { lenght: "3 ft", width: "-4 ft", filled: 55, pail: "1 ft", depth: "12" });
    expect(codes(problems)).toEqual(["unknown lenght", "tooLow width", "missing length", "noUnit depth", "tooHigh filled", "wrongDimension pail"]);
    expect(problems.map(({ message }) => message)).toEqual([
      "lenght: is not known here; did you mean length?",
      "width (inner width): is -4 ft, but must be above 0",
      "length (inner length): is missing; write a number and one of ft, m",
      'depth (inner depth): "12" has no unit; write a number and one of ft, m, mil, in, yd, um',
      'filled (share of the depth that is filled): is 55, but must be at most 1; did you mean "55 %"?',
      'pail (volume of a pail): "1 ft" is a length; write a number and one of gal, L, in3, ft3, yd3, qt',
    ]);
  });

  it("is thrown as one error by a call and by solve, and given by try", () => {
    const bad = { width: "4 ft" } as never;
    for (const run of [() => tank(bad), () => tank.solve(bad)]) {
      try {
        run();
        expect.unreachable();
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        expect(codes((error as InputError).problems)).toEqual(codes(problemsOf(tank, bad)));
        expect((error as InputError).message).toMatch(/^demo\.tank: length \(inner length\): is missing/);
      }
    }
  });

  it.each([
    [{ ...given, width: "0 ft" }, "tooLow width"],
    [{ ...given, width: "100 ft" }, undefined],
    [{ ...given, width: "100.0000001 ft" }, "tooHigh width"],
    [{ ...given, width: "1/1000000 mil" }, undefined],
    [{ ...given, length: "200 ft" }, "tooHigh length"],
    [{ ...given, length: "199.9999999 ft" }, undefined],
    [{ ...given, depth: "0 ft" }, undefined],
    [{ ...given, depth: "-1/64 in" }, "tooLow depth"],
    [{ ...given, filled: "100 %" }, undefined],
    [{ ...given, filled: "100.1 %" }, "tooHigh filled"],
  ])("the edge of a limit: %j", (input, code) => {
    expect(codes(problemsOf(tank, input))).toEqual(code === undefined ? [] : [code]);
  });

  it("a percentage that was written as one gets no such hint", () => {
    expect(problemsOf(tank, { ...given, filled: "101 %" })[0]?.message).toBe("filled (share of the depth that is filled): is 101 %, but must be at most 1");
  });

  it.each([
    [{ net: 70 }, ["either allowance"], "allowance: none is given; give exactly one of waste and lossShare"],
    [{ net: 70, waste: 0.1, lossShare: 0.1 }, ["either allowance"], "allowance: waste and lossShare exclude each other; give exactly one of waste and lossShare"],
    [{ net: 70, waste: "ten" }, ["notANumber waste"], undefined],
    [{ net: 70, waste: "ten", lossShare: 0.1 }, ["notANumber waste", "either allowance"], undefined],
    [{ waste: 2 }, ["missing net", "tooHigh waste"], undefined],
  ] as const)("of a pair, exactly one: %j", (input, expected, message) => {
    const problems = problemsOf(order, input);
    expect(codes(problems)).toEqual(expected);
    if (message !== undefined) expect(problems[0]?.message).toBe(message);
  });

  it.each([null, undefined, 5, "4 ft", true, [], [given], Symbol("x"), 5n, () => given])("%o is no input", (input) => {
    expect(codes(problemsOf(tank, input))).toEqual(["wrongKind "]);
    expect(problemsOf(tank, input)[0]?.message).toMatch(/^input: .* cannot be read; give an object with width, length, depth, filled, pail$/);
  });

  it("a key of every word there is, far from any input, lists them", () => {
    expect(problemsOf(tank, { ...given, colour: "red" })[0]?.message).toBe("colour: is not known here; there are width, length, depth, filled, pail");
  });
});

it("a count that must be whole refuses a part, and takes a whole one however it is written", () => {
  const boxes = calculation({
    id: "demo.boxes",
    title: "Boxes",
    given: { packCount: { is: "count", symbol: "n", says: "screws in a box", atLeast: 1, whole: true } },
    steps: { screws: { is: "count", symbol: "s", formula: "packCount * 3", basis: { kind: "derived", says: "arithmetic" } } },
  });
  const codes = (packCount: unknown): readonly (readonly [string, string])[] => problemsOf(boxes, { packCount }).map(({ code, message }) => [code, message]);
  expect(codes("2.5")).toEqual([["notWhole", "packCount (screws in a box): is 2.5, but must be a whole number"]]);
  expect(codes(1.0000001).map(([code]) => code)).toEqual(["notWhole"]);
  expect(codes("1/2").map(([code]) => code)).toEqual(["tooLow"]);
  expect(boxes({ packCount: "10/2" }).screws.toString()).toBe("15");
  expect(boxes({ packCount: 100 }).screws.toString()).toBe("300");
});

describe("a step that has no answer", () => {
  it("a division by nought is a problem under the step's name", () => {
    const [only, ...others] = problemsOf(tank, { ...given, pail: "0 gal" });
    expect(others).toEqual([]);
    expect(only).toMatchObject({ code: "noAnswer", path: ["pails"], message: "pails (whole pails): has no answer, because it divides by 0" });
  });

  it("a step outside its own limits too", () => {
    // 100 ft x 199 ft x 10 ft x 62.4 lb/ft3 = 12 417 600 lb.
    const [only] = problemsOf(tank, { ...given, width: "100 ft", length: "199 ft", depth: "10 ft", filled: 1 });
    expect(only).toMatchObject({ code: "tooHigh", path: ["mass"], given: "12417600 lb", message: "mass (mass): is 12417600 lb, but must be at most 1000000 lb" });
  });
});

describe("try never throws, whatever it is given", () => {
  const trap = (): never => {
    throw new Error("trap");
  };
  const toss = (what: unknown): never => {
    throw what as Error;
  };
  const revoked = Proxy.revocable({}, {});
  revoked.revoke();
  const oddError = (): never => {
    throw Object.defineProperty(new Error("x"), "message", { get: trap });
  };

  it.each([
    ["a getter that throws", { ...given, get width(): never { return trap(); } }],
    ["a getter that throws no error", { ...given, get width(): never { return toss("nothing"); } }],
    ["a getter that throws an error that cannot be asked", { ...given, get width(): never { return oddError(); } }],
    ["a getter that throws a revoked proxy", { ...given, get width(): never { return toss(revoked.proxy); } }],
    ["a proxy that refuses everything", new Proxy({}, { ownKeys: trap, get: trap, has: trap, getOwnPropertyDescriptor: trap, getPrototypeOf: trap })],
    ["a revoked proxy", revoked.proxy],
    ["a value whose unit throws", { ...given, width: { value: 1, get unit(): never { return trap(); } } }],
    ["a value that is a trap", { ...given, width: new Proxy({}, { has: trap }) }],
    ["a value that writes itself for ever", { ...given, width: { dimension: "length", toJSON(): unknown { return this; } } }],
    ["a decimal that is none", { ...given, width: { value: { toStringTag: "[object Decimal]", toString: trap }, unit: "ft" } }],
    ["a list in a list", { ...given, width: [[["4 ft"]]] }],
    ["a key of a million letters", { ...given, ["x".repeat(1_000_000)]: 1 }],
  ])("%s", (_what, input) => {
    const tried = tank.try(input);
    expect(tried.ok).toBe(false);
    if (!tried.ok) {
      expect(tried.problems.length).toBeGreaterThan(0);
      for (const { message } of tried.problems) expect(message.length).toBeLessThan(600);
    }
  });

  it("what a getter says of itself is told", () => {
    expect(problemsOf(tank, { ...given, get width(): never { return trap(); } })[0]).toMatchObject({ code: "refused", path: [], message: "input: it could not be worked out (trap)" });
  });
});

describe("keys of prototypes are data", () => {
  it.each(["__proto__", "constructor", "toString", "hasOwnProperty", "valueOf"])("%s", (key) => {
    const input: unknown = JSON.parse(`{ "width": "4 ft", "length": "3 ft", "filled": "50 %", "pail": "1 gal", "${key}": { "width": "1 ft" } }`);
    expect(codes(problemsOf(tank, input))).toEqual([`unknown ${key}`]);
    expect(({} as { width?: unknown }).width).toBeUndefined();
  });

  it("what is inherited is not given", () => {
    expect(codes(problemsOf(tank, Object.create(given)))).toEqual(["missing width", "missing length", "missing filled", "missing pail"]);
  });

  it("an object without a prototype is an input", () => {
    expect(tank.try(Object.assign(Object.create(null) as object, given)).ok).toBe(true);
  });
});

describe("a solution tells all of it", () => {
  const solution = tank.solve(given);

  it("what was given, what was assumed, the constants", () => {
    expect(solution.given.map(({ name, value, assumed }) => [name, String(value), assumed])).toEqual([
      ["width", "4 ft", false], ["length", "3 ft", false], ["depth", "1 ft", true], ["filled", "50 %", false], ["pail", "1 gal", false],
    ]);
    expect(solution.constants.map(({ name, value, basis }) => [name, String(value), basis])).toEqual([["density", "62.4 lb/ft3", measured]]);
    expect(solution.assumptions).toEqual(["depth (inner depth) taken as 1 ft: common practice: tanks are usually a foot deep"]);
    expect(tank.solve({ ...given, depth: "1 ft" }).assumptions).toEqual([]);
  });

  it("each step: its words, whether it is exact, which argument won, where it differs", () => {
    expect(solution.steps.map(({ name, says, exact }) => [name, says, exact])).toEqual([
      ["floor", "floor", true], ["volume", "volume", true], ["mass", "mass", true], ["pails", "whole pails", true], ["shortSide", "short side", true], ["diagonal", "diagonal", false],
    ]);
    expect(solution.steps.map(({ governedBy }) => governedBy)).toEqual([undefined, undefined, undefined, undefined, "length", undefined]);
    expect(solution.steps.map(({ differs }) => differs)).toEqual([undefined, undefined, undefined, undefined, undefined, "the source rounds it up"]);
  });

  it("what it stands on, each once: the default that was taken, the constant, the steps", () => {
    expect(solution.bases).toEqual([usual, measured, byHand]);
    expect(tank.solve({ ...given, depth: "1 ft" }).bases).toEqual([measured, byHand]);
  });

  it("its id, title and cautions; a calculation has no parts", () => {
    expect(solution).toMatchObject({ id: "demo.tank", title: "Water in a tank", cautions: ["A full tank is heavy."], parts: [] });
  });

  it("its answers are those of a call", () => {
    expect(JSON.stringify(solution.answers)).toBe(JSON.stringify(tank(given)));
  });
});

/** What hangs on a value, without what it hides; each once. */
function everything(value: unknown, seen = new Set<object>()): ReadonlySet<object> {
  if (typeof value !== "object" || value === null || seen.has(value)) return seen;
  seen.add(value);
  for (const part of Object.values(value)) everything(part, seen);
  return seen;
}

describe("nothing can be changed from outside", () => {
  it("a solution, an attempt and the problems are frozen through and through", () => {
    for (const whole of [tank.solve(given), tank.try(given), tank.try({}), tank(given), tank.definition]) {
      expect([...everything(whole)].filter((part) => !Object.isFrozen(part))).toEqual([]);
    }
  });

  it("the calculation itself too", () => {
    expect(Object.isFrozen(tank)).toBe(true);
    expect(Object.isFrozen(tank["~standard"])).toBe(true);
  });

  it("an input is left as it was, frozen or not", () => {
    const input = { ...given, width: { value: "4", unit: "ft" } as const };
    const before = JSON.stringify(input);
    tank(input);
    expect(JSON.stringify(input)).toBe(before);
    expect(Object.isFrozen(input) || Object.isFrozen(input.width)).toBe(false);
    expect(tank(Object.freeze({ ...input, width: Object.freeze(input.width) })).floor.toString()).toBe("12 ft2");
  });

  it("two calls do not touch each other", () => {
    const first = tank.solve(given);
    tank.solve({ ...given, width: "8 ft" });
    expect(first.answers.floor.toString()).toBe("12 ft2");
  });
});

describe("the Standard Schema interface, version 1", () => {
  const { version, vendor, validate } = tank["~standard"];

  it("is as the specification wants it", () => {
    expect([version, vendor, typeof validate]).toEqual([1, "settingbed", "function"]);
  });

  it("gives the input back where it has an answer", () => {
    expect(validate(given)).toEqual({ value: given });
  });

  it("gives issues with a message and a path where it has none", () => {
    expect(validate({ ...given, width: "4", pail: "0 gal" })).toMatchObject({ issues: [{ path: ["width"], message: /* as the problem has it */ expect.stringContaining('"4" has no unit') as string }] });
    expect(validate({ ...given, pail: "0 gal" })).toMatchObject({ issues: [{ path: ["pails"] }] });
    expect(validate(5)).toMatchObject({ issues: [{ path: [] }] });
  });
});

describe("a definition that cannot be read fails at the first call, and says where", () => {
  const made = (row: object): (() => unknown) => {
    const broken = calculation({ id: "demo.broken", title: "Broken", given: { a: { is: "length", unit: "ft", symbol: "a", says: "a length", ...row } }, steps: { b: { is: "length", unit: "ft", symbol: "b", formula: "a", basis: byHand } } } as never) as unknown as (input: unknown) => unknown;
    return () => broken({ a: "1 ft" });
  };

  it.each([
    [{ unit: "gal" }, '"gal" is no unit of length'],
    [{ unit: undefined }, '"length" is no unit of length'],
    [{ above: "1 gal" }, '"1 gal" is a volume'],
    [{ default: "a foot", basis: byHand }, '"a foot" has no number'],
  ])("%j", (row, message) => {
    expect(made(row)).toThrow(message);
  });

  it("a formula that is none", () => {
    const broken = calculation({ id: "demo.broken", title: "Broken", given: {}, steps: { b: { is: "ratio", symbol: "b", formula: "1 +", basis: byHand } } });
    expect(() => broken({})).toThrow('"1 +": unexpected end');
  });
});

it("every answer is a quantity of this package", () => {
  expect(Object.values(tank(given)).every(isQuantity)).toBe(true);
});
