// A composed function: parts in order, problems seen from its own input, choices, what it gathers, what it freezes.
import { describe, expect, it } from "vitest";
import { composed } from "../../src/core/composed.js";
import { InputError, type Problem } from "../../src/core/problems.js";
import { sum, times } from "../../src/core/quantity-arithmetic.js";
import { isQuantity } from "../../src/core/quantity.js";
import { quantity } from "../../src/core/read-quantity.js";
import type { StandardSchema } from "../../src/core/standard-schema.js";
import { byHand, measured, order, tank, usual } from "../support/demo.js";

/** A tank of one of two makes, half filled; either/or, a choice, an optional input, defaults. */
const filling = composed({
  id: "demo.filling",
  title: "Filling a tank",
  cautions: ["Mind the hose."],
  given: {
    side: { is: "length", unit: ["ft", "m"], symbol: "s", says: "side of a square tank", above: 0, either: "size" },
    floor: { is: "area", unit: ["ft2", "m2"], symbol: "A", says: "floor of the tank", above: 0, either: "size" },
    how: { oneOf: ["pail", "hose"], says: "how it is filled" },
    pail: { is: "volume", unit: ["gal", "L"], symbol: "p", says: "volume of a pail", atLeast: 0, optional: true },
    spare: { is: "count", symbol: "n", says: "pails more", atLeast: 0, default: 2, basis: usual },
  },
  run: ({ side, floor, how, pail, spare }, work) => {
    if (how === "hose") {
      if (pail !== undefined) return work.refuse({ code: "refused", path: ["pail"], given: "", wanted: "a hose needs no pail" });
      return { how, pails: undefined, spare };
    }
    if (pail === undefined) return work.refuse({ code: "missing", path: ["pail"], says: "volume of a pail", given: "", wanted: "a pail has a volume" });
    work.assume("The pail is full to the brim.");
    work.caution("A full tank is heavy.");
    work.stand(measured);
    const width = side ?? quantity("length", "1 ft");
    const length = floor === undefined ? width : quantity("length", { value: floor.to("ft2"), unit: "ft" });
    const { answers } = work.part(tank, { width, length, filled: "50 %", pail }, ["side"]);
    return { how, pails: answers.pails, sizes: [{ width }, { length }] };
  },
});

const problemsOf = (run: { readonly try: (input: unknown) => unknown }, input: unknown): readonly Problem[] => {
  const tried = run.try(input) as ReturnType<typeof filling.try>;
  return tried.ok ? [] : tried.problems;
};
const codes = (problems: readonly Problem[]): readonly string[] => problems.map(({ code, path }) => `${code} ${path.join(".")}`);

describe("its answer and what it tells", () => {
  // 4 ft x 4 ft x 1 ft, half filled: 8 ft3 = 13824 in3, in pails of 231 in3: 59.8, so 60.
  const solution = filling.solve({ side: "4 ft", how: "pail", pail: "1 gal" });

  it("answers may be words, quantities and lists", () => {
    expect(solution.answers.how).toBe("pail");
    expect(solution.answers.pails?.toString()).toBe("60");
    expect(filling({ side: "4 ft", how: "pail", pail: "1 gal" }).pails?.toString()).toBe("60");
    expect(filling({ floor: "8 ft2", how: "pail", pail: "1 gal" }).pails?.toString()).toBe("30");
    expect(filling({ side: "4 ft", how: "hose" })).toMatchObject({ how: "hose", pails: undefined });
  });

  it("what was given, a default beside it, a choice as a word", () => {
    expect(solution.given.map(({ name, value, assumed }) => [name, isQuantity(value) ? value.toString() : value, assumed])).toEqual([
      ["side", "4 ft", false], ["how", "pail", false], ["pail", "1 gal", false], ["spare", "2", true],
    ]);
  });

  it("parts in order, and what they say gathered once, its own first", () => {
    expect(solution.parts.map(({ id }) => id)).toEqual(["demo.tank"]);
    expect(solution.cautions).toEqual(["Mind the hose.", "A full tank is heavy."]);
    expect(solution.assumptions).toEqual([
      "spare (pails more) taken as 2: common practice: tanks are usually a foot deep",
      "The pail is full to the brim.",
      "depth (inner depth) taken as 1 ft: common practice: tanks are usually a foot deep",
    ]);
    expect(solution.bases).toEqual([usual, measured, byHand]);
    expect(solution.steps).toEqual([]);
  });
});

describe("what is wrong", () => {
  it.each([
    [{}, ["missing how", "either size"]],
    [{ side: "4", floor: "3 ft2", how: "pail", hows: 1 }, ["unknown hows", "noUnit side", "either size"]],
    [{ side: "4 ft", how: "bucket" }, ["notAChoice how"]],
    [{ side: "4 ft", how: null, spare: -1 }, ["notAChoice how", "tooLow spare"]],
    [{ side: "4 ft", how: "hose", pail: "1 ft" }, ["wrongDimension pail"]],
    [{ side: "4 ft", how: "hose", pail: "1 gal" }, ["refused pail"]],
    [{ side: "4 ft", how: "pail" }, ["missing pail"]],
  ])("%j", (input, expected) => {
    expect(codes(problemsOf(filling, input))).toEqual(expected);
  });

  it("a word that is not offered is told those that are", () => {
    expect(problemsOf(filling, { side: "4 ft", how: "bucket" })[0]?.message).toBe('how (how it is filled): "bucket" is not offered; write one of pail, hose');
  });

  it("a problem of a part is seen from the input it comes from", () => {
    // A side of 300 ft is beyond the tank's own limits of 100 ft and 200 ft.
    const problems = problemsOf(filling, { side: "300 ft", how: "pail", pail: "1 gal" });
    expect(codes(problems)).toEqual(["tooHigh side.width", "tooHigh side.length"]);
    expect(problems[0]?.message).toBe("side.width (inner width): is 300 ft, but must be at most 100 ft");
    expect(codes(problemsOf(filling, { side: "4 ft", how: "pail", pail: "0 gal" }))).toEqual(["noAnswer side.pails"]);
  });

  it("is thrown by a call under the composed function's own name", () => {
    expect(() => filling({ side: "300 ft", how: "pail", pail: "1 gal" })).toThrow(InputError);
    expect(() => filling({ side: "300 ft", how: "pail", pail: "1 gal" })).toThrow(/^demo\.filling: side\.width/);
  });
});

describe("several parts", () => {
  const orders = composed({
    id: "demo.orders",
    title: "Orders",
    given: { first: { is: "count", symbol: "a", says: "first" }, second: { is: "count", symbol: "b", says: "second" } },
    run: ({ first, second }, work) => {
      const solved = [work.attempt(order, { net: first, waste: "10 %" }, ["first"]), work.attempt(order, { net: second, waste: "10 %" }, ["second"])];
      if (solved.some((one) => one === undefined)) work.problem({ code: "refused", path: [], given: "", wanted: "both must be worked out" });
      return { pieces: sum(solved.flatMap((one) => (one === undefined ? [] : [one.answers.toOrder]))) };
    },
  });

  it("attempt lets the run go on, and all problems come together", () => {
    expect(codes(problemsOf(orders, { first: 0, second: -1 }))).toEqual(["tooLow first.net", "tooLow second.net", "refused "]);
    expect(codes(problemsOf(orders, { first: 10, second: 0 }))).toEqual(["tooLow second.net", "refused "]);
  });

  it("a run that trips over what a problem left out still tells the problems", () => {
    // Where both orders fail there is nothing to add up, and `sum` throws.
    expect(() => sum([])).toThrow(RangeError);
    expect(() => orders({ first: 0, second: 0 })).toThrow(InputError);
  });

  it("a run that noted a problem has no answer, even where it ends well", () => {
    expect(() => orders({ first: 10, second: 0 })).toThrow(InputError);
    // 11 + 22.
    expect(orders({ first: 10, second: 20 }).pieces.toString()).toBe("33");
  });

  it("one that fails is no part", () => {
    const all = composed({ id: "demo.all", title: "All", given: { first: { is: "count", symbol: "a", says: "first" } }, run: ({ first }, work) => ({ a: work.part(orders, { first, second: times(first, 2) }).answers.pieces }) });
    const solution = all.solve({ first: 10 });
    expect(solution.parts.map(({ id, parts }) => [id, parts.map((part) => part.id)])).toEqual([["demo.orders", ["demo.order", "demo.order"]]]);
    expect(codes(problemsOf(all, { first: -1 }))).toEqual(["tooLow first.net", "tooLow second.net", "refused "]);
  });

  it("a part that fails ends the run, and one problem noted is enough to have no answer", () => {
    const reached: string[] = [];
    const strict = composed({
      id: "demo.strict",
      title: "Strict",
      given: { first: { is: "count", symbol: "a", says: "first" } },
      run: ({ first }, work) => {
        const solution = work.part(order, { net: first, waste: 0 }, ["first"]);
        reached.push("behind the part");
        work.problem({ code: "refused", path: ["first"], given: "", wanted: "another" });
        return solution.answers;
      },
    });
    expect(codes(problemsOf(strict, { first: 0 }))).toEqual(["tooLow first.net"]);
    expect(reached).toEqual([]);
    expect(codes(problemsOf(strict, { first: 1 }))).toEqual(["refused first"]);
    expect(reached).toEqual(["behind the part"]);
  });

  it("hands on what its parts beware of, and stands on no usual value that was not used", () => {
    const { filled, pail } = { filled: "50 %", pail: "1 gal" } as const;
    const quiet = composed({
      id: "demo.quiet",
      title: "Quiet",
      given: { spare: { is: "count", symbol: "n", says: "pails more", default: 2, basis: usual } },
      run: (_given, work) => work.part(tank, { width: "1 ft", length: "1 ft", depth: "1 ft", filled, pail }).answers,
    });
    expect(quiet.solve({}).cautions).toEqual(tank.definition.cautions);
    expect(quiet.solve({}).bases).toContain(usual);
    expect(quiet.solve({ spare: 1 }).bases).not.toContain(usual);
  });

  it("an error of a part that is no bad input is not hidden either", () => {
    const broken = composed({ id: "demo.broken", title: "Broken", given: {}, run: (): never => { throw new TypeError("a slip"); } });
    const around = composed({ id: "demo.around", title: "Around", given: {}, run: (_given, work) => ({ all: work.attempt(broken, {}) === undefined }) });
    expect(() => around({})).toThrow(new TypeError("a slip"));
  });

  it("an error that is no bad input is not hidden: a call throws it, try tells it", () => {
    const broken = composed({ id: "demo.broken", title: "Broken", given: {}, run: (): never => { throw new TypeError("a slip"); } });
    expect(() => broken({})).toThrow(new TypeError("a slip"));
    expect(problemsOf(broken, {})[0]).toMatchObject({ code: "refused", message: "input: it could not be worked out (a slip)" });
  });
});

describe("a choice and a quantity that exclude each other", () => {
  const steel = composed({
    id: "demo.steel",
    title: "Steel",
    given: {
      designation: { oneOf: ["18 mil", "30 mil"], says: "designation of the steel", either: "steel" },
      thickness: { is: "length", unit: ["in", "mm"], symbol: "t", says: "thickness of the steel", above: 0, either: "steel" },
      rusty: { oneOf: [true, false], says: "whether it is rusty", default: false, basis: usual },
    },
    run: ({ designation, thickness, rusty }) => ({ told: designation ?? thickness?.toString(), rusty }),
  });

  it("either will do", () => {
    expect(steel({ designation: "18 mil" })).toEqual({ told: "18 mil", rusty: false });
    expect(steel({ thickness: "0.02 in", rusty: true })).toEqual({ told: "0.02 in", rusty: true });
    expect(steel.solve({ designation: "18 mil" }).assumptions).toEqual(["rusty (whether it is rusty) taken as false: common practice: tanks are usually a foot deep"]);
  });

  it("but not both, and not none", () => {
    expect(codes(problemsOf(steel, { designation: "18 mil", thickness: "0.02 in" }))).toEqual(["either steel"]);
    expect(codes(problemsOf(steel, { rusty: "no" }))).toEqual(["notAChoice rusty", "either steel"]);
    expect(codes(problemsOf(steel, { designation: "19 mil" }))).toEqual(["notAChoice designation"]);
  });
});

describe("input that a schema reads", () => {
  const upperCase: StandardSchema<string, string> = {
    "~standard": {
      version: 1,
      vendor: "test",
      validate: (value) => (typeof value === "string" ? { value: value.toUpperCase() } : { issues: [{ message: "write a text", path: ["a", { key: 2 }, "b"] }, { message: "write something else" }] }),
    },
  };
  const loud = composed({ id: "demo.loud", title: "Loud", reads: upperCase, run: (text) => ({ text }) });

  it("is what run gets", () => {
    expect(loud("word")).toEqual({ text: "WORD" });
  });

  it("a stranger's issues become problems, with their paths", () => {
    const problems = problemsOf(loud, 5);
    expect(codes(problems)).toEqual(["refused a.2.b", "refused "]);
    expect(problems.map(({ message }) => message)).toEqual(["a[2].b: write a text", "input: write something else"]);
  });

  it("an issue that brings a problem of ours is that problem, and one with other things in it is a stranger's", () => {
    const ours = problemsOf(filling, {})[0];
    const issues: readonly object[] = [{ message: "a", params: { problem: ours } }, { message: "b", params: null }, { message: "c", params: { why: "so" } }, { message: "d", params: "problem" }, { message: "e", path: [Symbol("here")] }];
    const strange = composed({ id: "demo.strange", title: "Strange", reads: { "~standard": { version: 1, vendor: "test", validate: () => ({ issues }) } } as never, run: (text) => ({ text }) });
    const problems = problemsOf(strange, 5);
    expect(problems[0]).toBe(ours);
    expect(problems.slice(1).map(({ code, path, message }) => [code, path, message])).toEqual([
      ["refused", [], "input: b"], ["refused", [], "input: c"], ["refused", [], "input: d"], ["refused", ["Symbol(here)"], "Symbol(here): e"],
    ]);
  });

  it("a schema that reads in its own time cannot be used", () => {
    const later: StandardSchema<string, string> = { "~standard": { version: 1, vendor: "test", validate: (value) => Promise.resolve({ value: String(value) }) } };
    const late = composed({ id: "demo.late", title: "Late", reads: later, run: (text) => ({ text }) });
    expect(() => late("word")).toThrow("cannot be used here");
  });
});

describe("nothing can be changed from outside", () => {
  it("answers are frozen all the way down, and a circle does not trap it", () => {
    const circle: { self?: unknown; list: number[] } = { list: [1] };
    circle.self = circle;
    const round = composed({ id: "demo.round", title: "Round", given: {}, run: () => ({ circle }) });
    const { answers } = round.solve({});
    expect([answers, answers.circle, answers.circle.list].every(Object.isFrozen)).toBe(true);
  });

  it("solution, lists and lines are frozen", () => {
    const solution = filling.solve({ side: "4 ft", how: "pail", pail: "1 gal" });
    const parts: readonly unknown[] = [solution, solution.given, ...solution.given, solution.parts, solution.assumptions, solution.cautions, solution.bases, ...solution.bases, solution.answers, solution.answers.sizes, filling];
    expect(parts.every(Object.isFrozen)).toBe(true);
  });
});

it("shows what reads its input: its own rows, or a schema", () => {
  expect(Object.keys(filling.given)).toEqual(["side", "floor", "how", "pail", "spare"]);
  expect(filling).not.toHaveProperty("reads");
  const anything: StandardSchema<unknown, unknown> = { "~standard": { version: 1, vendor: "test", validate: (value) => ({ value }) } };
  const read = composed({ id: "demo.read", title: "Read", reads: anything, run: (value) => ({ value }) });
  expect(read.reads).toBe(anything);
  expect(read).not.toHaveProperty("given");
});

it("the Standard Schema interface is as a calculation's", () => {
  const { validate } = filling["~standard"];
  const input = { side: "4 ft", how: "hose" } as const;
  expect(validate(input)).toEqual({ value: input });
  expect(validate({ side: "4 ft", how: "bucket" })).toMatchObject({ issues: [{ path: ["how"] }] });
});
