// Counts against the same formulas in big whole numbers (tests/support/whole-number-walk.ts), which share nothing with the
// engine but the reader of formulas; other answers against a single call, 40 digits and fractions.
import { describe, expect, it } from "vitest";
import { choicesOf } from "../../src/core/prepared.js";
import { calculation, InputError, type Quantity } from "../../src/core/index.js";
import { arithmetic as basis } from "../../src/data/basis.js";
import { coatingOrder } from "../../src/film/index.js";
import { coursedFace } from "../../src/joints/index.js";
import { solveMany } from "../../src/many/index.js";
import { checkMany, roughened } from "../support/check-many.js";
import { columnsOf, type film, manyJobs } from "../support/many-jobs.js";
import { allCalculations } from "../support/modules.js";
import { drawInputs } from "../support/random-inputs.js";
import { drawFrom } from "../support/random.js";
import { printed, vectorRows } from "../support/vectors.js";
import { walkOf } from "../support/whole-number-walk.js";

const manyOf = (run: unknown, columns: unknown): { readonly answers: Readonly<Record<string, { readonly unit: string; readonly values: Float64Array }>>; readonly problems: readonly { readonly row: number; readonly problems: readonly unknown[] }[] } =>
  solveMany(run as typeof film, columns as never);

describe("no count is one off", () => {
  it.each(manyJobs.map((job) => [job.name, job] as const))("in 20,000 jobs of %s", { timeout: 120_000 }, (_name, job) => {
    const { wrong, wrongInPlainNumbers } = checkMany(job, 20_000, 7);
    expect(wrong).toEqual([]);
    // So the jobs do test something.
    expect(wrongInPlainNumbers).toBeGreaterThan(10);
  });

  it.each(manyJobs.map((job) => [job.name, job] as const))("where numbers have too many decimals to be whole: %s", { timeout: 120_000 }, (_name, job) => {
    const draw = drawFrom(11);
    const counts = Object.entries(job.run.definition.given).flatMap(([name, { is }]) => ((is as string) === "count" ? [name] : []));
    const rows = Array.from({ length: 3000 }, () => roughened(job.draw(draw), draw, counts));
    const walk = walkOf(job.run.definition);
    const { answers, problems } = manyOf(job.run, columnsOf(job, rows));
    const exact = rows.map((row, index) => (problems.some((one) => one.row === index) ? undefined : walk(row)));
    for (const count of job.counts) {
      expect([...(answers[count]?.values ?? [])].filter((_, index) => exact[index] !== undefined)).toEqual(exact.flatMap((row) => (row === undefined ? [] : [Number(row.get(count)?.[0])])));
    }
  });

  // Every row of tests/vectors/rounding-cases.json, worked out by hand there; tests/cross takes them one by one.
  const cases = vectorRows.filter(({ file }) => file === "rounding-cases.json");
  it.each(cases.map((row) => [row.id, row] as const))("in the rounding case %s", (_id, { inputs, formula = "", expected }) => {
    const names = Object.keys(inputs);
    const given = Object.fromEntries(names.map((name) => [name, { is: "ratio", symbol: name, says: name }]));
    const run = calculation({ id: "demo.count", title: "Count", given, steps: { count: { is: "count", symbol: "n", formula, basis } } } as never);
    const { answers } = manyOf(run, Object.fromEntries(names.map((name) => [name, { values: [Number(printed(inputs[name] ?? "")?.number)] }])));
    expect(String(answers.count?.values[0])).toBe(printed(Object.values(expected)[0] ?? "")?.number);
  });

  it("where an argument is nearer to a whole number than doubles can tell", () => {
    const run = calculation({
      id: "demo.near", title: "Near", given: { a: { is: "ratio", symbol: "a", says: "a" }, b: { is: "ratio", symbol: "b", says: "b" } },
      steps: {
        up: { is: "count", symbol: "u", formula: "ceil(a * a / b)", basis },
        down: { is: "count", symbol: "d", formula: "floor(a * a / b)", basis },
        near: { is: "count", symbol: "n", formula: "round(a / b)", basis },
        root: { is: "count", symbol: "r", formula: "ceil(sqrt(a * a))", basis },
      },
    });
    // (1 + 1e-9)^2 is 1 + 2e-9 + 1e-18; halves go away from nought; the root of a square is the number itself.
    const { answers } = solveMany(run, { a: { values: [1.000000001, 1.000000001, -2.5, 0.3, -0.3, 3] }, b: { values: [1.000000002, 1.000000003, 1, 0.1, 0.1, 2] } });
    expect([...answers.up.values]).toEqual([2, 1, 7, 1, 1, 5]);
    expect([...answers.down.values]).toEqual([1, 0, 6, 0, 0, 4]);
    expect([...answers.near.values]).toEqual([1, 1, -3, 3, -3, 2]);
    expect([...answers.root.values]).toEqual([2, 2, 3, 1, 1, 3]);
  });
});

const calculations = await allCalculations();

describe("every calculation of the catalogue", () => {
  const all = calculations.flatMap(({ run, definition }) => choicesOf(definition).map((chosen) => [`${definition.id} ${chosen.join()}`, run, definition, chosen] as const));
  it.each(all)("%s", (_id, run, definition, chosen) => {
    const draw = drawFrom(5);
    const first = drawInputs(definition, chosen, draw);
    const rows = [first, ...Array.from({ length: 12 }, () => drawInputs(definition, chosen, draw))].map((row) => Object.fromEntries(Object.entries(first).map(([name, one]) => [name, row[name] ?? one])));
    const columns = Object.fromEntries(Object.entries(first).map(([name, one]) => [name, { values: rows.map((row) => Number((row[name] as { readonly value: string }).value)), unit: (one as { readonly unit: string }).unit }]));
    const { answers, problems } = manyOf(run, columns);
    rows.forEach((row, index) => {
      const single = (run as unknown as typeof film).try(row);
      expect(problems.find((one) => one.row === index)?.problems).toEqual(single.ok ? undefined : single.problems);
      if (!single.ok) return;
      for (const [name, quantity] of Object.entries<Quantity>(single.solution.answers)) {
        const { unit = "", values } = answers[name] ?? {};
        const wanted = quantity.toNumber(unit as never);
        const zero = quantity.dimension === "temperature" ? 500 : 0;
        if (/ceil|floor|round/.test(JSON.stringify(definition.steps[name]?.formula)) && Number.isInteger(wanted)) expect(values?.[index]).toBe(wanted);
        else expect(Math.abs((values?.[index] ?? NaN) - wanted)).toBeLessThanOrEqual(1e-12 * Math.max(Math.abs(wanted), zero));
      }
    });
  });
});

describe("columns", () => {
  const face = { unitLength: "11-5/8 in", unitHeight: "3-5/8 in" } as const;

  it("take one value for all rows, and give the units asked for", () => {
    const { rows, answers } = solveMany(coursedFace, { ...face, area: { values: [312, 624], unit: "ft2" }, depth: "3/4 in" }, { volume: "L", jointShare: "ratio" });
    // (11-5/8 + 3/8) by (3-5/8 + 3/8) is 48 in2, of which 5.859375 are joint: 312 ft2 x 5.859375/48 x 1/16 ft, and a cubic foot is 28.316846592 L.
    expect(rows).toBe(2);
    expect(answers.jointShare).toEqual({ unit: "ratio", values: Float64Array.of(0.1220703125, 0.1220703125) });
    expect(answers.volume.unit).toBe("L");
    expect(answers.volume.values[0]).toBeCloseTo(2.38037109375 * 28.316846592, 10);
    expect(answers.unitsPerArea.values[0]).toBe(3);
  });

  it("choose of a pair by the one that is given", () => {
    const { answers } = solveMany(coatingOrder, { area: { values: [3850], unit: "ft2" }, wetFilm: "35 mil", coats: 1, lossShare: { values: [0.3] }, packVolume: "5 gal" });
    expect(answers.packs.values[0]).toBe(24);
  });

  it("give a row its problems, those of .try, and the other rows their answers", () => {
    const areas = [100, NaN, -1, 0, 1e-300, 1e40, Infinity, 250];
    const { answers, problems } = solveMany(coursedFace, { ...face, area: { values: areas, unit: "ft2" }, depth: "3/4 in" });
    expect(problems.map(({ row }) => row)).toEqual([1, 2, 3, 4, 5, 6]);
    for (const { row, problems: own } of problems) {
      const single = coursedFace.try({ ...face, area: { value: areas[row], unit: "ft2" }, depth: "3/4 in" });
      expect(own).toEqual(single.ok ? [] : single.problems);
      expect(answers.volume.values[row]).toBeNaN();
    }
    expect(answers.unitsPerArea.values[7]).toBe(3);
  });

  it("refuse a step that is outside its own limits, or has no finite value", () => {
    const ratio = (name: string) => ({ is: "ratio", symbol: name, says: name }) as const;
    const run = calculation({
      id: "demo.limits", title: "Limits", given: { a: ratio("a"), b: ratio("b") },
      steps: {
        left: { is: "ratio", symbol: "l", formula: "a - b", basis, atLeast: 0 },
        quotient: { is: "ratio", symbol: "q", formula: "1 / (a / b - 3)", basis },
        inverse: { is: "ratio", symbol: "i", formula: "1 / (2 / (b - 1))", basis },
      },
    });
    const { answers, problems } = solveMany(run, { a: { values: [0.3, 0.1, 1, 3, 5, 0.7] }, b: { values: [0.1, 0.3, 0, 1, 4, 0.7] } });
    expect(problems.map(({ row, problems: own }) => [row, own[0]?.code, own[0]?.path])).toEqual([
      [0, "noAnswer", ["quotient"]],
      [1, "tooLow", ["left"]],
      [2, "noAnswer", ["quotient"]],
      [3, "noAnswer", ["quotient"]],
    ]);
    expect([answers.left.values[4], answers.left.values[5], answers.inverse.values[4]]).toEqual([1, 0, 1.5]);
  });

  it("refuse what is wrong with themselves, all at once", () => {
    const bad = { area: { values: [1, 2], unit: "gal" }, unitLength: { values: new Float32Array(2), unit: "in" }, unitHeight: { values: [1, 2] }, dept: "1 in" };
    const refused = (): unknown => solveMany(coursedFace, bad as never, { volume: "ft2", weight: "lb" } as never);
    expect(refused).toThrow(InputError);
    try {
      refused();
    } catch (error) {
      expect((error as InputError).problems.map(({ code, path }) => [code, path.join(".")])).toEqual([
        ["unknown", "dept"], ["wrongDimension", "area"], ["wrongKind", "unitLength"], ["noUnit", "unitHeight"], ["missing", "depth"], ["unknownUnit", "units.volume"], ["unknown", "units.weight"],
      ]);
    }
    expect(() => solveMany(coursedFace, { ...face, area: { values: [1, 2], unit: "ft2" }, depth: { values: [1], unit: "in" } })).toThrow("depth: has 1 number where area has 2");
    expect(() => solveMany(coursedFace, { ...face, area: "1 ft2", depth: "1 in" })).toThrow("give at least one input as { values, unit }");
  });

  it("may be empty", () => {
    expect(solveMany(coursedFace, { ...face, area: { values: [], unit: "ft2" }, depth: "1 in" })).toMatchObject({ rows: 0, problems: [] });
  });
});
