// A row as it is given: cells alone, cells with a number, or what a reader of sheets found wrong.
import { expect, it } from "vitest";
import { readRow } from "../../../src/takeoff/rows/read-row.js";

const fresh = { problems: undefined, form: undefined, at: 0, kept: [] };
const cells = { width: "20 ft" };

it.each<[what: string, given: unknown, row: number, cells: unknown]>([
  ["plain cells have the next number", cells, 5, cells],
  ["cells with their number", { row: 9, cells }, 9, cells],
  ["what a table gives", { row: 9, value: cells }, 9, cells],
  ["what a table gives goes before cells", { row: 9, value: cells, cells: {} }, 9, cells],
  ["a column named row", { row: "9", cells }, 5, { row: "9", cells }],
  ["columns named row and cells", { row: 9, cells: "12" }, 5, { row: 9, cells: "12" }],
  ["columns named row and value", { row: 9, value: null }, 5, { row: 9, value: null }],
  ["columns named row and problems", { row: "9", problems: [], cells }, 5, { row: "9", problems: [], cells }],
  ["problems that are no list", { row: 9, problems: "none", cells }, 9, cells],
])("%s", (_, given, row, expected) => {
  expect(readRow(given, 5)).toStrictEqual({ ...fresh, row, cells: expected });
});

it("problems come with the number of the row", () => {
  const problems = [{ code: "refused" }];
  expect(readRow({ row: 9, problems, value: cells }, 5)).toStrictEqual({ ...fresh, row: 9, cells: {}, problems });
});

it.each([[undefined, "undefined"], [null, "null"], [7, "7"], ["text", '"text"'], [[cells], "a list"]])("%s is no row", (given, shown) => {
  const { row, cells: none, problems } = readRow(given, 5);
  expect([row, none]).toEqual([5, {}]);
  expect(problems?.map(({ code, path, given: told }) => [code, path, told])).toEqual([["wrongKind", ["rows", 5], shown]]);
});
