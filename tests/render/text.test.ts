// What is printed can be worked again: a learner with a pocket calculator gets the printed figure.
import { evaluate } from "mathjs";
import { describe, expect, it } from "vitest";
import { workings } from "../../src/core/working.js";
import { coatingOrder } from "../../src/film/index.js";
import { concaveLoss, coursedFace } from "../../src/joints/index.js";
import { squareNotchBed } from "../../src/mortar/index.js";
import { pullOutTo2016 } from "../../src/fasteners/index.js";
import { markdown, text } from "../../src/render/index.js";
import type { Solution } from "../../src/core/index.js";
import { takeOff } from "../../src/takeoff/index.js";

const solutions: readonly (readonly [string, Solution])[] = [
  ["coursed face", coursedFace.solve({ area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: "3/4 in" })],
  ["coating", coatingOrder.solve({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", packVolume: "5 gal" })],
  ["concave joint", concaveLoss.solve({ width: "3/8 in", depth: "3/4 in", toolRadius: "1/4 in" })],
  ["notched bed", squareNotchBed.solve({ depth: "1/2 in", width: "1/2 in", tooth: "1/4 in", angle: "45 deg" })],
];

/** A figure with its last digit's worth: half a unit there is what rounding may take. */
function lastPlace(number: string): number {
  const [, decimals = ""] = number.split(".");
  return 10 ** -decimals.length;
}

describe.each(solutions)("the worked lines of a %s", (_, solution) => {
  it.each(["us", "si"] as const)("give the printed results when they are typed again (%s)", (units) => {
    for (const { step, operands, result } of workings(solution, { units })) {
      // Percent and degrees are typed as the numbers they stand for.
      const scope = Object.fromEntries([...operands].map(([name, { number, unit }]) => [name, Number(number) * (unit === "%" ? 0.01 : unit === "deg" ? Math.PI / 180 : 1)]));
      const source = solution.steps.find(({ name }) => name === step.name);
      expect(source).toBeDefined();
      const typed = Number(evaluate(formulaOf(step), scope));
      expect(Math.abs(typed - Number(result.number))).toBeLessThanOrEqual(lastPlace(result.number) * 1.01);
    }
  });

  it.each(["us", "si"] as const)("say = where a figure is all of the value, and ≈ where digits were left out (%s)", (units) => {
    for (const { step, result, shown } of workings(solution, { units })) {
      const { to, factor } = shown ?? { to: result, factor: undefined };
      // The value at 40 digits, in the unit in which it is printed.
      const value = step.value.to((to.unit === "" ? undefined : to.unit) as never);
      expect([step.name, to.exact]).toEqual([step.name, step.exact && value.eq(to.number)]);
      if (factor?.exact === false) expect(text(solution, { units })).toContain(` ${factor.number} ${factor.unit} ≈ `);
    }
  });
});

/** The formula as mathjs reads it. */
function formulaOf(step: Solution["steps"][number]): string {
  const line = text(solutions.find(([, one]) => one.steps.includes(step))?.[1] ?? (undefined as never)).split("\n").find((one) => one.trim().startsWith(`${step.name} = `));
  return (line ?? "").split(" = ").slice(1).join(" = ");
}

describe("rendering", () => {
  it("shows the conversion inside a step", () => {
    expect(text(solutions[0]?.[1] as Solution)).toContain("depth: 0.75 in / 12 in/ft = 0.0625 ft");
  });

  it("shows a length in inches as the tape has it", () => {
    expect(text(solutions[0]?.[1] as Solution)).toMatch(/actual face length of one unit +L +11-5\/8 in/);
  });

  it("keeps stress in force and length", () => {
    const solution = pullOutTo2016.solve({ thickness: "0.0451 in", screwDiameter: "0.19 in", ultimateStress: "45 ksi" } as never);
    expect(text(solution)).not.toMatch(/\/h2|\/s2/);
  });

  it("escapes in Markdown what a browser or Markdown would take for its own", () => {
    const first = solutions[0]?.[1] as Solution;
    const told = markdown({ ...first, title: "a <b>bold</b> | `claim`" });
    expect(told.split("\n")[0]).toBe("# a &lt;b>bold&lt;/b> \\| \\`claim\\`");
  });

  it.each([undefined, null, 3, "text", {}, coursedFace({ area: "1 ft2", unitLength: "1 in", unitHeight: "1 in", depth: "1 in" })])("refuses what is no solution: %s", (value) => {
    expect(() => text(value as never)).toThrow(TypeError);
    expect(() => markdown(value as never)).toThrow(TypeError);
  });
});

it("an order list has a column for each figure of a line, and none for the solutions behind it", () => {
  const list = takeOff.solve({
    measuredTo: "backing",
    elevations: [{ name: "north", shape: { kind: "rectangle", width: "40 ft", height: "8 ft" }, openings: [], outsideCorners: [] }],
    layers: [{ kind: "foam board", name: "foam", boardWidth: "4 ft", boardHeight: "8 ft" }],
    packs: {},
    allowances: { foam: { waste: "10 %" } },
  });
  const written = text(list, { parts: false });
  expect(written).toMatch(/^ *item +layer +net +allowance +allowance is +to order +packs/m);
  expect(written).not.toContain("solution");
});
