// A wall filled from the cells of a row: what goes where, what is left out, and where a problem came from.
import { describe, expect, it } from "vitest";
import { problem } from "../../../src/core/problems.js";
import { quantity } from "../../../src/core/index.js";
import { cellOf, cellTrouble, countColumn, fillWall, isFromColumn, isNone, problemOfRow, valueAt, type WallPattern } from "../../../src/takeoff/rows/fill-wall.js";

const column = (name: string): { readonly column: string } => ({ column: name });

const pattern: WallPattern = {
  name: column("wall"),
  shape: { kind: "rectangle", width: column("width"), height: "9 ft" },
  openings: [
    { shape: { width: column("window") }, count: column("windows"), toBase: false },
    { shape: { width: column("door") }, count: 1 },
  ],
};

describe("a wall", () => {
  it("is filled from the cells, and tells which place came from where", () => {
    expect(fillWall(pattern, { wall: "east", width: "20 ft", window: "3 ft", windows: 2, door: "4 ft", more: "nothing asks for it" })).toEqual({
      wall: {
        name: "east",
        shape: { kind: "rectangle", width: "20 ft", height: "9 ft" },
        openings: [{ shape: { width: "3 ft" }, count: 2, toBase: false }, { shape: { width: "4 ft" }, count: 1 }],
      },
      places: [
        { column: "wall", path: ["name"] },
        { column: "width", path: ["shape", "width"] },
        { column: "window", path: ["openings", 0, "shape", "width"] },
        { column: "windows", path: ["openings", 0, "count"] },
        { column: "door", path: ["openings", 1, "shape", "width"] },
      ],
      troubles: [],
    });
  });

  it("leaves out what there is none of, and those after it move up", () => {
    const { wall, places, troubles } = fillWall(pattern, { wall: "east", width: "20 ft", windows: "0", door: "4 ft" });
    expect(wall).toMatchObject({ openings: [{ shape: { width: "4 ft" }, count: 1 }] });
    expect((wall as { readonly openings: readonly unknown[] }).openings).toHaveLength(1);
    expect(places.at(-1)).toEqual({ column: "door", path: ["openings", 0, "shape", "width"] });
    expect(troubles).toEqual([]);
  });

  it("tells each cell that is empty or a formula", () => {
    const { troubles } = fillWall(pattern, { wall: "=A1", width: " ", window: "3 ft", windows: null });
    expect(troubles.map(({ code, path, given }) => [code, path, given])).toEqual([["refused", ["wall"], '"=A1"'], ["missing", ["width"], ""], ["missing", ["windows"], ""], ["missing", ["door"], ""]]);
  });
});

it("a cell is the row's own", () => {
  expect([cellOf({ width: 3 }, "width"), cellOf({}, "width"), cellOf({}, "toString")]).toEqual([3, undefined, undefined]);
});

it("what stands at a place of a wall is found, and nothing where there is no such place", () => {
  const wall = { openings: [{ count: 1 }, { count: 2 }] };
  expect([valueAt(["openings", 1, "count"], wall), valueAt([], wall), valueAt(["soffits", 0, "count"], wall)]).toEqual([2, wall, undefined]);
});

it.each<[part: object, is: boolean]>([
  [{ column: "width" }, true], [{}, false], [{ width: "3 ft" }, false], [{ column: "width", height: "3 ft" }, false], [["column"], false],
])("%j is from a column: %s", (part, is) => {
  expect(isFromColumn(part)).toBe(is);
});

it.each<[entry: WallPattern, from: string | undefined]>([
  [{ count: column("windows") }, "windows"], [{ count: 2 }, undefined], [{ count: "2" }, undefined], [{ width: column("window") }, undefined],
  [{ count: { value: column("windows"), unit: "count" } }, undefined], ["count", undefined], [3, undefined], [[column("count")], undefined],
])("%j has its count from %s", (entry, from) => {
  expect(countColumn(entry)).toBe(from);
});

it.each([[0, true], [-0, true], ["0", true], [" 00 ", true], [quantity("count", 0), true], [1, false], ["1", false], ["10", false], ["", false], ["0 x", false], [[0], false], [undefined, false], [null, false], [false, false], [quantity("count", 2), false]])("%s says that there is none: %s", (said, none) => {
  expect(isNone(said)).toBe(none);
});

describe("a cell", () => {
  it.each([[undefined], [null], [""], ["  "]])("%j is empty", (value) => {
    expect(cellTrouble(value, "width")).toMatchObject({ code: "missing", path: ["width"], given: "" });
  });

  it.each([["=B2*2"], ["@SUM(A1)"], [" =1"], ["+A1"], ["- A1"], ["-x"]])("%j is a formula", (value) => {
    expect(cellTrouble(value, "width")).toMatchObject({ code: "refused", path: ["width"], given: JSON.stringify(value) });
  });

  it.each([["20 ft"], ["-3 ft"], ["+ .5 ft"], ["+3"], ["a = b"], [0], [false], [["=B2"]], [{ value: 3, unit: "ft" }]])("%j is neither", (value) => {
    expect(cellTrouble(value, "width")).toBeUndefined();
  });
});

describe("a problem", () => {
  const places = [{ column: "wall", path: ["name"] }, { column: "width", path: ["shape", "width"] }, { column: "window", path: ["openings", 1, "shape", "width"] }];
  it.each<[what: string, path: readonly (string | number)[], told: readonly (string | number)[]]>([
    ["of the wall, under its column", ["shape", "width"], ["rows", 7, "width"]],
    ["of the job, under the column of its wall", ["elevations", 0, "openings", 1, "shape", "width"], ["rows", 7, "window"]],
    ["within what a cell holds", ["elevations", 0, "shape", "width", "value"], ["rows", 7, "width"]],
    ["of what no column holds, where it is", ["openings", 0, "shape", "width"], ["rows", 7, "openings", 0, "shape", "width"]],
    ["of a part that columns fill, where it is", ["elevations", 0, "shape"], ["rows", 7, "elevations", 0, "shape"]],
    ["of the assembly, where it is", ["packs", "foam"], ["rows", 7, "packs", "foam"]],
  ])("%s", (_, path, told) => {
    const of = problem({ code: "refused", path, says: "width", given: "9 gal", wanted: "a length" });
    expect(problemOfRow(7, of, places)).toEqual(problem({ code: "refused", path: told, says: "width", given: "9 gal", wanted: "a length" }));
  });
});
