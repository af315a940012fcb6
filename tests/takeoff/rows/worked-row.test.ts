// A row that was taken off: its lines at hand, its working when it is asked for, and made once.
import { expect, it } from "vitest";
import type { Solution } from "../../../src/core/solution.js";
import type { TakeOff } from "../../../src/takeoff/take-job.js";
import { WorkedRow } from "../../../src/takeoff/rows/worked-row.js";

const lines = [{ item: "foam", layer: "foam board", unit: "count", net: 10, toOrder: 11 }] as const;

it("asks for its working once, with what it was given", () => {
  const asked: unknown[] = [];
  const solution = { title: "Order list" } as unknown as Solution<TakeOff>;
  const solve = (given: unknown): Solution<TakeOff> => {
    asked.push(given);
    return solution;
  };
  const row = new WorkedRow(7, "east", lines, ["20 ft"], solve);
  expect([row.ok, row.row, row.name, row.lines]).toEqual([true, 7, "east", lines]);
  expect(Object.isFrozen(row)).toBe(true);
  expect(asked).toEqual([]);
  expect([row.solution, row.solution]).toEqual([solution, solution]);
  expect(asked).toEqual([["20 ft"]]);
  expect(JSON.parse(JSON.stringify(row))).toEqual({ ok: true, row: 7, name: "east", lines, solution });
});
