// Exercises: every calculation gives some, the same seed the same, all within limits; the usual mistakes are those that
// a learner makes with pencil and paper, worked out here by hand.
import { describe, expect, it } from "vitest";
import { coatingOrder } from "../../src/film/index.js";
import { boardCount, boardLayout } from "../../src/boards/index.js";
import { coursedFace, jointByLength, pointingOrder } from "../../src/joints/index.js";
import { calculation, InputError } from "../../src/core/index.js";
import { exercise, exercises, handOut, hasFormulas, isRight, mistakeOf } from "../../src/exercise/index.js";
import { html, latex, markdown, mathml, text } from "../../src/render/index.js";
import { unitSystem } from "../../src/core/units.js";
import { isQuantity } from "../../src/core/quantity.js";
import { allCalculations } from "../support/modules.js";

/** What is left between two faces; below nought there is none. */
const wall = calculation({
  id: "demo.wall",
  title: "Thickness of a wall",
  given: {
    outside: { is: "length", unit: ["in", "mm"], symbol: "o", says: "outside", above: 0 },
    inside: { is: "length", unit: ["in", "mm"], symbol: "i", says: "inside", above: 0 },
  },
  steps: { left: { is: "length", unit: ["in", "mm"], symbol: "l", formula: "outside - inside", atLeast: 0, basis: { kind: "derived", says: "geometry" } } },
});

const calculations = await allCalculations();

describe("every calculation", { timeout: 300000 }, () => {
  it.each([1, 2, 3] as const)("gives an exercise at level %i, whose answer is right and whose mistakes are told apart", (level) => {
    for (const { run } of calculations) {
      const one = exercise(run, { seed: level, level, units: level === 1 ? "si" : "us" });
      expect(isRight(one, one.asked.value), one.id).toBe(true);
      expect(mistakeOf(one, one.asked.value)).toBeUndefined();
      for (const mistake of one.mistakes) {
        expect(isRight(one, mistake.answer), `${one.id}: ${mistake.says.join("; ")}`).toBe(false);
        expect(mistakeOf(one, mistake.answer)).toBe(mistake);
      }
      // What is given is what was drawn, and it reads back to the same answer.
      expect(run.solve(one.given as never).steps.map(({ value }) => value.toJSON())).toEqual(one.solution.steps.map(({ value }) => value.toJSON()));
    }
  });

  it("comes again with the same seed, and differs with another", () => {
    let differing = 0;
    for (const { run } of calculations) {
      const [first, again, other] = [5, 5, 6].map((seed) => exercise(run as never, { seed }));
      expect(again?.given).toEqual(first?.given);
      if (JSON.stringify(other?.given) !== JSON.stringify(first?.given)) differing += 1;
    }
    expect(differing).toBeGreaterThan(calculations.length * 0.9);
  });
});

describe("what is drawn", () => {
  const tape = /^(\d+ ft )?(\d+|\d+-\d+\/(2|4|8|16|32|64)|\d+\/(2|4|8|16|32|64)) in$/;

  it("is written as the tape has it", () => {
    for (let seed = 1; seed <= 25; seed += 1) expect(exercise(coursedFace, { seed }).given.unitLength).toMatch(tape);
  });

  it("is in whole or half inches or less fine steps at the first level, with defaults left alone", () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const { given } = exercise(coursedFace, { seed, level: 1 });
      expect(given).not.toHaveProperty("headJoint");
    }
  });

  it("is in the units of the SI where that is asked for", () => {
    const { solution } = exercise(coursedFace, { seed: 4, units: "si" });
    const systems = solution.given.flatMap(({ value, assumed }) => (isQuantity(value) && !assumed ? [unitSystem(value.unit)] : []));
    expect(new Set(systems)).toEqual(new Set(["si"]));
  });

  it("follows the teacher: a value, a list, a range", () => {
    const areas = new Set<string | number | undefined>();
    for (let seed = 1; seed <= 40; seed += 1) {
      const { given } = exercise(coursedFace, { seed, vary: { depth: "3/4 in", unitHeight: ["3-5/8 in", "7-5/8 in"], area: { from: "100 ft2", to: "104 ft2", step: "2 ft2" } } });
      expect(given.depth).toBe("3/4 in");
      expect(["3-5/8 in", "7-5/8 in"]).toContain(given.unitHeight);
      areas.add(given.area);
    }
    expect([...areas].sort()).toEqual(["100 ft2", "102 ft2", "104 ft2"]);
  });

  it("a default is given where the teacher varies it", () => {
    expect(exercise(coursedFace, { seed: 1, level: 1, vary: { headJoint: "1/2 in" } }).given.headJoint).toBe("1/2 in");
  });
});

describe("what cannot be drawn", () => {
  const problemsOf = (act: () => unknown): readonly string[] => {
    try {
      act();
    } catch (error) {
      if (error instanceof InputError) return error.problems.map(({ code, path }) => `${code} ${path.join(".")}`);
      throw error;
    }
    return [];
  };

  it("is told, all of it at once", () => {
    expect(problemsOf(() => exercise(coursedFace, { seed: 1.5, ask: "volum", vary: { depht: "1 in", area: "-3 ft2", unitLength: "7", bedJoint: { from: "1 in", to: "2 in", step: "0 in" } } }))).toEqual([
      "refused seed", "unknown vary.depht", "unknown ask", "refused vary.area", "noUnit vary.unitLength", "refused vary.bedJoint",
    ]);
  });

  it("limits that leave nothing are named", () => {
    expect(() => exercise(coursedFace, { seed: 1, vary: { depth: { from: "-2 in", to: "-1 in", step: "1/8 in" } } })).toThrow(/depth .*nothing is left to draw: it must be above 0/);
  });

  it("values that have no answer together end in an error with the reason", () => {
    expect(() => exercise(coatingOrder, { seed: 1, vary: { area: "100 ft2", lossShare: "20 %", waste: "10 %" } })).not.toThrow();
    expect(() => exercise(wall, { seed: 1, vary: { outside: "1 in", inside: "2 in" } })).toThrow(/the limits leave nothing to draw/);
  });

  it("what has no formulas is refused", () => {
    expect(hasFormulas(boardLayout)).toBe(false);
    expect(() => exercise(boardLayout, { seed: 1 })).toThrow(TypeError);
    expect(() => exercises([coursedFace, boardLayout], { seed: 1 })).toThrow(/hasFormulas/);
    expect(() => exercises([], { seed: 1 })).toThrow(TypeError);
    expect(() => exercises([coursedFace], { seed: 1, count: 0 })).toThrow(InputError);
  });
});

describe("usual mistakes, by hand", () => {
  // 900 ft2 at 35 mil: 900 * 144 in2 * 0.035 in = 4536 in3; a gallon is 231 in3 by definition: 19.636 gal.
  const coating = exercise(coatingOrder, { seed: 1, vary: { area: "900 ft2", wetFilm: "35 mil", coats: 1, waste: "20 %", packVolume: "5 gal" }, ask: "toOrder" });

  it.each([
    ["23.56 gal", undefined], // 19.636 * 1.20
    ["28.28 gal", "wasteTwice"], // 19.636 * 1.20 * 1.20
    ["24.55 gal", "wasteAsDivision"], // 19.636 / 0.80
    ["19.64 gal", "wasteLeftOut"],
    ["412.4 gal", "percentAsNumber"], // 19.636 * 21
    ["30 gal", undefined],
  ])("%s of coating: %s", (answer, kind) => {
    expect(mistakeOf(coating, answer)?.kinds[0]).toBe(kind);
    expect(isRight(coating, answer)).toBe(answer === "23.56 gal");
  });

  it("loss: a share of what is bought is no waste on top", () => {
    // 19.636 gal with 20 % lost: / 0.8 = 24.545; * 1.2 = 23.564; / 0.64 = 30.682.
    const one = exercise(coatingOrder, { seed: 1, vary: { area: "900 ft2", wetFilm: "35 mil", coats: 1, lossShare: "20 %", packVolume: "5 gal" }, ask: "toOrder" });
    expect(isRight(one, "24.55 gal")).toBe(true);
    expect(mistakeOf(one, "23.56 gal")?.kinds).toEqual(["lossAsWaste"]);
    expect(mistakeOf(one, "30.68 gal")?.kinds).toEqual(["lossTwice"]);
  });

  it("the 12 left out, and 12 taken for 144", () => {
    // 96 ft of joint, 3/8 in by 1/2 in: 96 * 0.03125 ft * 0.0416667 ft = 0.125 ft3.
    const one = exercise(jointByLength, { seed: 1, vary: { length: "96 ft", width: "3/8 in", depth: "1/2 in" } });
    expect(isRight(one, "0.125 ft3")).toBe(true);
    const kinds = one.mistakes.map(({ kinds: [kind], answer }) => `${kind ?? ""} ${answer.to("ft3").toSignificantDigits(4).toString()}`);
    // 96 * 0.375 * 0.5 / 144 is right; without the 144 it is 18, with 12 for it 1.5.
    expect(kinds).toContain("conversionLeftOut 18");
    expect(kinds).toContain("conversionOfLength 1.5");
  });

  it("nominal for actual size", () => {
    // Units 11-5/8 by 3-5/8 in with 3/8 in joints are 12 by 4 in nominal. With nominal sizes and joints round them:
    // 1 - 48 / (12.375 * 4.375) = 0.113420; 312 ft2 * 0.113420 * 0.0625 ft = 2.2117 ft3. Actual: 1 - 42.140625 / 48 = 0.122070; 2.3804 ft3.
    const one = exercise(coursedFace, { seed: 1, vary: { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", headJoint: "3/8 in", bedJoint: "3/8 in", depth: "3/4 in" }, ask: "volume" });
    expect(isRight(one, "2.38 ft3")).toBe(true);
    expect(mistakeOf(one, "2.212 ft3")?.kinds).toEqual(["nominalSize"]);
    expect(isRight(one, "67.40 L")).toBe(true); // 2.38037 ft3 * 28.316847 L/ft3
  });

  it("boards: rounded down, and waste on what was rounded up already", () => {
    // 400 ft2 in boards of 3 by 5 ft: 26.67; with 10 %: 29.33, so 30. Rounded up first: 27 * 1.1 = 29.7, 30 again: no mistake to tell.
    const one = exercise(boardCount, { seed: 1, vary: { area: "400 ft2", boardWidth: "36 in", boardHeight: "60 in", waste: "10 %" } });
    expect(isRight(one, 30)).toBe(true);
    expect(isRight(one, 29)).toBe(false);
    expect(mistakeOf(one, 29)?.kinds).toContain("roundedTheWrongWay");
    expect(mistakeOf(one, 27)?.kinds).toContain("wasteLeftOut");
    expect(one.mistakes.flatMap(({ kinds }) => kinds)).not.toContain("roundedUpTwice");
  });

  it("an answer that cannot be read is told with how to write it", () => {
    expect(() => mistakeOf(coating, "23.56")).toThrow(/has no unit/);
    expect(() => isRight(coating, "23.56 ft2")).toThrow(InputError);
  });

  it("an answer counts within one in the last of its digits", () => {
    expect(isRight(coating, "23.57 gal")).toBe(true);
    expect(isRight(coating, "23.58 gal")).toBe(false);
  });
});

describe("a set", () => {
  it("takes each calculation as often as any other, and comes again with the same seed", () => {
    const set = exercises([coursedFace, pointingOrder, boardCount], { seed: 9, count: 9 });
    const ids = set.map(({ id }) => id);
    for (const { id } of [coursedFace, pointingOrder, boardCount]) expect(ids.filter((one) => one === id)).toHaveLength(3);
    expect(exercises([coursedFace, pointingOrder, boardCount], { seed: 9, count: 9 }).map(({ problem }) => problem)).toEqual(set.map(({ problem }) => problem));
    expect(new Set(set.map(({ problem }) => problem)).size).toBe(9);
  });
});

describe("a hand-out", () => {
  const one = exercise(coursedFace, { seed: 2, ask: "volume" });

  it.each(Object.entries({ text, markdown, html, latex, mathml }))("in %s does not give the answer away before the key", (_, render) => {
    const { problem, sheet, key } = handOut(one, render);
    const answer = one.asked.value.to("ft3").toSignificantDigits(one.digits).toFixed();
    expect(problem).not.toContain(answer);
    expect(sheet).not.toContain(answer);
    expect(sheet).not.toContain("unitsPerArea *");
    expect(key).toContain(answer);
    expect(key).toContain("Usual mistakes");
    for (const { says } of one.mistakes) for (const line of says) expect(key.replaceAll("\\", "")).toContain(line.split(":").at(-1)?.split(";")[0]?.trim().split(" ").at(-1));
  });

  it("the problem in words says all that is given, and the unit and digits that are asked", () => {
    for (const value of Object.values(one.given)) expect(one.problem).toContain(String(value));
    expect(one.problem).toMatch(/Find: .* in ft3, to 4 significant digits\.$/);
  });
});
