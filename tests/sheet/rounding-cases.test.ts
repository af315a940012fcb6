// The counts whose exact argument is a whole number, which binary numbers miss: a sheet counts them as we do.
import { describe, expect, it } from "vitest";
import { calculation } from "../../src/core/calculation.js";
import type { Solution } from "../../src/core/index.js";
import { workbook } from "../../src/sheet/index.js";
import { byHand } from "../support/demo.js";
import { printed, vectorRows } from "../support/vectors.js";
import { lacking, Office } from "./office/office.js";

// As it is in tests/cross/rounding-cases.test.ts, which uses each of them.
const rows = vectorRows.filter(({ file, formula }) => file === "rounding-cases.json" && formula !== undefined);

/** The row's own formula as a calculation over bare numbers, worked out. */
function solutionOf({ inputs, formula = "" }: (typeof rows)[number]): Solution {
  const names = Object.keys(inputs);
  const given = Object.fromEntries(names.map((name) => [name, { is: "ratio", symbol: name, says: name }]));
  const run = calculation({ id: "demo.whole", title: "Count", given, steps: { found: { is: "count", symbol: "n", formula, basis: byHand } } } as never);
  const tried = run.try(Object.fromEntries(names.map((name) => [name, printed(inputs[name] ?? "")?.number])));
  if (!tried.ok) throw new Error(tried.problems.map(({ message }) => message).join("; "));
  return tried.solution;
}

if (lacking !== undefined) console.log(`Rounding cases are not recalculated: ${lacking}.`);

describe.skipIf(lacking !== undefined)("a sheet", () => {
  it("counts as printed, in binary numbers", () => {
    const office = new Office();
    office.put("cases.xlsx", workbook([{ ...solutionOf(rows[0]!), steps: [], parts: rows.map(solutionOf) }]), { bare: true });
    const [read] = office.recalculated(["cases.xlsx"]);
    office.close();
    const wrong = rows.flatMap(({ id, expected }, index) => {
      const [wanted = ""] = Object.values(expected);
      const found = read!.names[`whole_${index === 0 ? "" : `${String(index + 1)}_`}found`];
      return String(found) === printed(wanted)?.number ? [] : [`${id}: ${String(found)} for ${wanted}`];
    });
    expect(rows.length).toBeGreaterThan(40);
    expect(wrong).toEqual([]);
  }, 300_000);
});
