// Every calculation as a workbook, recalculated by LibreOffice: what its cells give must be what the library gives, with
// random inputs, and again after one given has been changed in the file. The figures beside the formulas are struck out first.
import { beforeAll, describe, expect, it } from "vitest";
import { toDecimal } from "../../src/core/amount.js";
import { choicesOf } from "../../src/core/prepared.js";
import { amountOf, isQuantity, type Quantity } from "../../src/core/quantity.js";
import type { Solution } from "../../src/core/solution.js";
import { unitSymbol } from "../../src/core/units.js";
import { workbook } from "../../src/sheet/index.js";
import { numberIn } from "../../src/sheet/pages/figures.js";
import { legalName } from "../../src/sheet/workbook/defined-names.js";
import { allCalculations, type FoundCalculation } from "../support/modules.js";
import { drawInputs } from "../support/random-inputs.js";
import { type Draw, drawFrom } from "../support/random.js";
import { lacking, Office, type Read } from "./office/office.js";

/** Random inputs for each calculation; `npm run test:sheets` takes 50. */
const { SHEET_ROUNDS = "5" } = process.env;
const rounds = Number(SHEET_ROUNDS);
const calculations = await allCalculations();

/** A solution, and the same with one given changed. */
interface Case {
  readonly before: Solution;
  readonly after: Solution;
  readonly changed: string;
}

function solved({ run }: FoundCalculation, input: Readonly<Record<string, unknown>>): Solution | undefined {
  const tried = run.try(input);
  return tried.ok ? tried.solution : undefined;
}

/** A case with random inputs; many draws have no answer, and are left out. */
function drawCase(found: FoundCalculation, chosen: readonly string[], draw: Draw): Case | undefined {
  const input = drawInputs(found.definition, chosen, draw);
  const before = solved(found, input);
  const names = Object.keys(input);
  if (before === undefined) return undefined;
  for (let tries = 0; tries < 30; tries += 1) {
    const changed = draw.one(names as [string, ...string[]]);
    const other = drawInputs(found.definition, chosen, draw)[changed];
    const after = other === undefined ? undefined : solved(found, { ...input, [changed]: other });
    if (after !== undefined) return { before, after, changed };
  }
  return undefined;
}

function cases(found: FoundCalculation): readonly Case[] {
  const draw = drawFrom(found.definition.id.length * 7919 + 11);
  const choices = choicesOf(found.definition);
  const all: Case[] = [];
  for (let tries = 0; all.length < rounds && tries < rounds * 200; tries += 1) {
    const one = drawCase(found, choices[tries % choices.length] ?? [], draw);
    if (one !== undefined) all.push(one);
  }
  return all;
}

/** What stands before the names of a solution's cells: `coursedFace_`, `coursedFace_2_`. */
function prefix(id: string, index: number): string {
  const short = (id.split(".").at(-1) ?? id).replace(/-+(.)/g, (_, letter: string) => letter.toUpperCase());
  return `${legalName(index === 0 ? short : `${short} ${String(index + 1)}`)}_`;
}

/** What differs between the cells and a solution: more than 1e-9, or a count at all. */
function faults({ names }: Read, solution: Solution, before: string): readonly string[] {
  return solution.steps.flatMap(({ name, value, formula }) => {
    const wanted = toDecimal(amountOf(value)).toNumber();
    const found = names[legalName(`${before}${name}`)];
    const whole = formula.kind === "call" && ["ceil", "floor", "round"].includes(formula.function);
    const near = typeof found === "number" && Math.abs(found - wanted) <= (whole ? 0 : 1e-9 * Math.max(1, Math.abs(wanted)));
    return near ? [] : [`${before}${name}: ${String(found)} for ${String(wanted)}`];
  });
}

function givenOf({ given }: Solution, name: string): Quantity {
  const value = given.find((line) => line.name === name)?.value;
  if (!isQuantity(value)) throw new Error(`${name} is no quantity`);
  return value;
}

if (lacking !== undefined) console.log(`Workbooks are not recalculated: ${lacking}.`);

/** Calculations that stand in one file: to open a file takes longer than to work it out. */
const together = 60;

/** The solutions of one calculation as if one function had run them all, so that they stand on one sheet. */
function asOne(solutions: readonly Solution[]): Solution {
  return { ...solutions[0]!, steps: [], given: [], answers: {}, parts: solutions };
}

describe.skipIf(lacking !== undefined)("a workbook gives what the library gives", () => {
  const worked = lacking === undefined ? calculations.map((found) => ({ found, id: found.definition.id, all: cases(found) })) : [];
  const files = Array.from({ length: Math.ceil(worked.length / together) }, (_, index) => ({
    name: `${String(index)}.xlsx`,
    changedName: `${String(index)}.changed.xlsx`,
    holds: worked.slice(index * together, (index + 1) * together),
  }));
  const read = new Map<string, Read>();
  const fileOf = (id: string): (typeof files)[number] => files.find(({ holds }) => holds.some((one) => one.id === id))!;

  beforeAll(() => {
    const office = new Office();
    const numbersOf = ({ before, after, changed }: Case, index: number): readonly [string, number] => {
      const { unit } = givenOf(before, changed);
      return [legalName(`given ${prefix(before.id, index)}${changed} ${unitSymbol(unit)}`), numberIn(givenOf(after, changed), unit)];
    };
    for (const { name, changedName, holds } of files) {
      const file = workbook(holds.map(({ all }) => asOne(all.map(({ before }) => before))), { limitsOf: holds.map(({ found }) => found.run) });
      office.put(name, file, { bare: true });
      office.put(changedName, file, { bare: true, numbers: Object.fromEntries(holds.flatMap(({ all }) => all.map(numbersOf))) });
    }
    const names = files.flatMap(({ name, changedName }) => [name, changedName]);
    const found = office.recalculated(names);
    names.forEach((name, index) => read.set(name, found[index]!));
    office.close();
  }, 3_600_000);

  it.each(worked.map((one) => [one.id, one] as const))("%s", (id, { all }) => {
    expect(all.length).toBe(rounds);
    const { name, changedName } = fileOf(id);
    expect(all.flatMap((one, index) => faults(read.get(name)!, one.before, prefix(id, index)))).toEqual([]);
    expect(all.flatMap((one, index) => faults(read.get(changedName)!, one.after, prefix(id, index)))).toEqual([]);
  });

  it("has no cell with an error", () => {
    expect([...read.values()].flatMap(({ errors }) => errors)).toEqual([]);
  });
});
