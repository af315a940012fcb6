// Rows of texts against single calls: the full reader and the exact arithmetic.
import { describe, expect, it } from "vitest";
import { InputError, type Quantity } from "../../src/core/index.js";
import { coatingOrder } from "../../src/film/index.js";
import { coursedFace } from "../../src/joints/index.js";
import { solveRows } from "../../src/many/index.js";
import { manyJobs } from "../support/many-jobs.js";
import { drawFrom } from "../support/random.js";

/** What a single call gives must be what the row gives. */
function expectSame(run: { readonly try: typeof coursedFace.try }, rows: readonly unknown[]): void {
  const { answers, problems } = solveRows(run as typeof coursedFace, rows);
  expect(problems.map(({ row }) => row)).toEqual([...problems.map(({ row }) => row)].sort((a, b) => a - b));
  rows.forEach((row, index) => {
    const single = run.try(row);
    expect(problems.find((one) => one.row === index)?.problems).toEqual(single.ok ? undefined : single.problems);
    for (const [name, { unit, values }] of Object.entries(answers)) {
      const wanted = single.ok ? (single.solution.answers as unknown as Readonly<Record<string, Quantity>>)[name]?.toNumber(unit) : NaN;
      if (single.ok) expect(Math.abs((values[index] ?? NaN) - (wanted ?? NaN))).toBeLessThanOrEqual(1e-12 * Math.abs(wanted ?? NaN));
      else expect(values[index]).toBeNaN();
    }
  });
}

const unit = { unitLength: "11-5/8 in", unitHeight: "3-5/8 in" };

describe("a row gives what a single call gives", () => {
  it("whatever the texts", () => {
    const depths = [
      "3/4 in", "0.75in", "1 1/4 in", "1-1/4 inches", "19 mm", "1/3 in", "0.1 ft", "1e1 mm", ".5 in", "5. mm", "+5 mm", "−5 mm", "-5 mm", "0 in", "1 ft 2 in", `1' 2"`, `3/4"`, "1,5 in", "5-7 in", "3/0 in",
      "3/4", "", "  2 in ", "2  in", "2 sq in", "2 gal", "2 parsecs", "12 3 in", "nan in", "1e99 in", "0.1234567890123456789 in", "123456789012345678 um", "9".repeat(90), "1-5 in", "1/2/3 in", "2 in 3", "0x10 in",
    ];
    expectSame(coursedFace, depths.map((depth) => ({ ...unit, area: "312 ft2", depth })));
  });

  it("whatever the rows", () => {
    const whole = { ...unit, area: "312 ft2", depth: "3/4 in" };
    expectSame(coursedFace, [whole, { ...whole, area: "29 m2" }, { ...whole, bedJoint: "10 mm" }, { ...whole, bedJoin: "10 mm" }, { ...whole, depth: undefined }, {}, null, [], "row", 3, { ...whole, area: { value: 12.5, unit: "ft2" } }, whole]);
    const order = { area: "3850 ft2", wetFilm: "35 mil", coats: "1", packVolume: "5 gal" };
    expectSame(coatingOrder as never, [{ ...order, lossShare: "30 %" }, { ...order, waste: "0.3" }, { ...order, waste: "30%", lossShare: "30 %" }, order, { ...order, coats: 1, waste: "5 %" }]);
  });

  it.each(manyJobs.map((job) => [job.name, job] as const))("in 300 jobs of %s", (_name, job) => {
    const draw = drawFrom(3);
    const rows = Array.from({ length: 300 }, () => Object.fromEntries(Object.entries(job.draw(draw)).map(([name, value]) => [name, `${String(value)} ${job.units[name] ?? ""}`])));
    expectSame(job.run as never, rows);
  });
});

it("answers come in the units asked for, and a unit that is none is refused", () => {
  const { answers } = solveRows(coursedFace, [{ ...unit, area: "312 ft2", depth: "3/4 in" }], { unitsPerArea: "/m2" });
  // 3 to the square foot, which is 0.3048^2 m2.
  expect(answers.unitsPerArea).toEqual({ unit: "/m2", values: Float64Array.of(3 / 0.09290304) });
  expect(() => solveRows(coursedFace, [], { volume: "ft2" as never })).toThrow(InputError);
});
