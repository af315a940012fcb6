// Where a value is shown in one of two units, the first is that of the United States and the second that of the SI: an
// answer is shown in the second where all that was given is metric.
import { expect, it } from "vitest";
import { catalogue } from "../../src/catalogue.js";
import type { AnyCallable } from "../../src/core/callable.js";
import type { Definition, Entries } from "../../src/core/definition.js";
import { findUnit, unitSystem } from "../../src/core/units.js";

/** Written out and not asked of the table: what is sold and measured so on either side. */
const customary = new Set(["in", "ft", "yd", "mil", "ft2", "in2", "ft3", "yd3", "floz", "qt", "gal", "lb", "degF"]);

const rows = (catalogue as readonly (AnyCallable & { readonly definition?: Definition; readonly given?: Entries })[]).flatMap(({ id, definition, given }) =>
  Object.entries({ ...given, ...definition?.given, ...definition?.constants, ...definition?.steps }).flatMap(([name, row]) => ("is" in row && Array.isArray(row.unit) ? [{ at: `${id} ${name}`, is: row.is, units: row.unit as readonly string[] }] : [])),
);

/** The metric form of an equation that was printed in both: it answers as its source does. */
const metricFirst = "weather.evaporation-uno-si ";

it("shows a value in the unit of the United States first, and in that of the SI second", () => {
  expect(rows.length).toBeGreaterThan(300);
  const wrong = rows.filter(({ at, is, units }) => {
    const [first = "", second = ""] = at.startsWith(metricFirst) ? [...units].reverse() : units;
    const [us, si] = [findUnit(is, first), findUnit(is, second)];
    return units.length !== 2 || us === undefined || si === undefined || unitSystem(us) === "si" || unitSystem(si) === "us" || customary.has(second);
  });
  expect(wrong.map(({ at, units }) => `${at}: ${units.join(", ")}`)).toEqual([]);
});
