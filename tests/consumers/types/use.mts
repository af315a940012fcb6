// A program that leans on the types: what is right compiles under `strict`, what is wrong does not.
import { type Attempt, calculation, InputError, type Problem, type Quantity, quantity, type Solution, type Step } from "settingbed/core";
import { coatingOrder } from "settingbed/film";
import { coursedFace } from "settingbed/joints";
import { type JsonSchema, jsonSchemaOf, schemaOf } from "settingbed/schema";
import { type Job, type OrderLine, takeOff } from "settingbed/takeoff";

// Inputs by name, each with its dimension; the answer of each step by its own.
const face = { area: "312 ft2", unitLength: "11-5/8 in", unitHeight: "3-5/8 in", depth: { value: 0.75, unit: "in" } } as const satisfies Parameters<typeof coursedFace>[0];
export const volume: Quantity<"volume"> = coursedFace(face).volume;
export const litres: number = volume.toNumber("L");

// @ts-expect-error a volume is no depth
coursedFace({ ...face, depth: "3/4 gal" });
// @ts-expect-error no such input
coursedFace({ ...face, thickness: "3/4 in" });
// @ts-expect-error something is missing
coursedFace({ area: "312 ft2" });
// @ts-expect-error no such answer
export const nothing = coursedFace(face).weight;
// @ts-expect-error a volume is not measured in feet
volume.to("ft");
// @ts-expect-error either waste or a loss, not both
coatingOrder({ area: "3850 ft2", wetFilm: "35 mil", coats: 1, lossShare: "30 %", waste: "5 %", packVolume: "5 gal" });

// What was typed by somebody: problems as data, or a solution with its steps.
export function told(typed: unknown): readonly string[] {
  const tried: Attempt<{ readonly packs: Quantity<"count"> }> = coatingOrder.try(typed);
  if (tried.ok) return tried.solution.steps.map((step: Step) => `${step.name} = ${step.value.toString()}`);
  return tried.problems.map((problem: Problem) => `${problem.path.join(".")}: ${problem.wanted}`);
}

// A whole job, and its lines.
export function lines(job: Job): readonly OrderLine[] {
  const solution: Solution<{ readonly lines: readonly OrderLine[] }> = takeOff.solve(job);
  return solution.answers.lines;
}

// Schemas, and a calculation of one's own.
export const schema: JsonSchema = jsonSchemaOf(coursedFace);
export const read: Quantity<"length"> = schemaOf(coursedFace)._zod.output.depth;
const roll = calculation({
  id: "own.roll",
  title: "Area of a roll",
  given: {
    width: { is: "length", unit: ["in", "mm"], symbol: "w", says: "width of the roll", above: 0 },
    length: { is: "length", unit: ["ft", "m"], symbol: "l", says: "length of the roll", above: 0 },
  },
  steps: { area: { is: "area", unit: ["ft2", "m2"], symbol: "A", formula: "width * length", basis: { kind: "derived", says: "geometry" } } },
});
export const area: Quantity<"area"> = roll({ width: quantity("length", "36 in"), length: "50 ft" }).area;
export const caught = (error: unknown): number => (error instanceof InputError ? error.problems.length : 0);
