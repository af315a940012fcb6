// Rows are read into forms: what is alike but for its numbers is worked out together. What only the full reader can read, or
// has to refuse, has no form.
import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/core/index.js";
import { type Cells, fillWall, type WallPattern } from "../../../src/takeoff/rows/fill-wall.js";
import type { Form } from "../../../src/takeoff/rows/form.js";
import { readAgain } from "../../../src/takeoff/rows/read-elevation.js";
import { readRow, type RowRead } from "../../../src/takeoff/rows/read-row.js";
import type { TracedWall } from "../../../src/takeoff/rows/traced-wall.js";
import { WallColumns } from "../../../src/takeoff/rows/wall-columns.js";

const column = (name: string): { readonly column: string } => ({ column: name });

const pattern: WallPattern = {
  name: column("wall"),
  shape: { kind: "rectangle", width: column("width"), height: column("height") },
  openings: [{ shape: { kind: "rectangle", width: column("window"), height: "4 ft" }, count: column("windows"), returnDepth: "4 in", returnUnits: column("units") }],
  outsideCorners: [{ height: column("height"), otherFace: "unclad" }],
};

const usual = { wall: "east", width: "40 ft", height: "9 ft", window: "3 ft", windows: 2, units: "corner" };

/** What columns a wall has, learned from the usual row. */
function learned(): WallColumns {
  const columns = new WallColumns(pattern, 8);
  const { wall, places } = fillWall(pattern, usual);
  columns.learn(places, readAgain(wall));
  return columns;
}

function read(columns: WallColumns, cells: Cells, forms = new Set<Form>()): RowRead {
  const row = readRow(cells, 2);
  columns.read(row, forms);
  return row;
}

/** The numbers of a block, by column. */
function numbersOf(form: Form | undefined): readonly (readonly number[])[] {
  let seen: readonly (readonly number[])[] = [];
  const run = (numbers: readonly Float64Array[], count: number): void => {
    seen = numbers.map((some) => [...some.subarray(0, count)]);
  };
  form?.learn(() => ({ run, rows: { holds: () => true } }) as unknown as TracedWall);
  form?.run();
  return seen;
}

describe("columns", () => {
  it("are named once each, in the order of the wall", () => {
    expect(new WallColumns(pattern, 8).names).toEqual(["wall", "width", "height", "window", "windows", "units"]);
    expect(new WallColumns({ name: "one name", openings: [{ count: 2, shape: "round" }], caps: [{ count: column("caps") }, "none"] }, 8).names).toEqual(["caps"]);
  });

  it("are unknown until a wall was read", () => {
    expect(read(new WallColumns(pattern, 8), usual).form).toBeUndefined();
    expect(read(learned(), usual).form).toBeDefined();
  });
});

describe("rows of one form", () => {
  it("are those that differ in numbers and names alone; feet go with inches", () => {
    const columns = learned();
    const forms = new Set<Form>();
    const rows = [
      usual,
      { ...usual, wall: "west", width: "30 in", windows: "1" },
      { ...usual, height: { value: 8, unit: "ft" }, window: quantity("length", "2.5 ft"), windows: quantity("count", 3) },
    ].map((cells) => read(columns, cells, forms));
    expect(forms.size).toBe(1);
    expect(rows.map(({ form, at }) => [form === rows[0]?.form, at])).toEqual([[true, 0], [true, 1], [true, 2]]);
    const form = rows[0]?.form;
    // The height stands in two places of the wall and in one column.
    expect(form?.columns).toEqual([{ name: "width", unit: "in" }, { name: "height", unit: "in" }, { name: "window", unit: "in" }, { name: "windows", unit: "count" }]);
    expect(numbersOf(form)).toEqual([[480, 30, 480], [108, 108, 96], [36, 36, 30], [2, 1, 3]]);
  });

  it("keep what stands in their columns", () => {
    const cells: Record<string, unknown> = { ...usual, more: "nothing asks for it" };
    const row = read(learned(), cells);
    cells.width = "1 ft";
    expect(row.kept).toEqual(["east", "40 ft", "9 ft", "3 ft", 2, "corner"]);
  });

  it("begin anew with a block", () => {
    const columns = learned();
    const first = new Set<Form>();
    const one = read(columns, usual, first);
    read(columns, usual, first);
    const next = new Set<Form>();
    expect([read(columns, { ...usual, width: "20 ft" }, next).at, read(columns, usual, next).at]).toEqual([0, 1]);
    expect([...next]).toEqual([one.form]);
    expect(numbersOf(one.form)[0]).toEqual([240, 480]);
  });
});

describe("rows of other forms", () => {
  const columns = learned();
  const { form } = read(columns, usual);

  it("have another word, or a unit that does not go with the other", () => {
    const others = [{ ...usual, units: "flat" }, { ...usual, width: "12.5 m" }, { ...usual, units: true }].map((cells) => read(columns, cells).form);
    expect(new Set([form, ...others]).size).toBe(4);
    expect(others).not.toContain(undefined);
    expect(others[1]?.columns[0]).toEqual({ name: "width", unit: "mm" });
    // The form that was made before is as it was.
    expect(form?.columns[0]).toEqual({ name: "width", unit: "in" });
  });

  it("have none of what others have, whatever stands in its cells", () => {
    const [none, too] = [0, "0"].map((windows) => read(columns, { ...usual, windows, window: "", units: undefined }));
    expect(none?.form).toBeDefined();
    expect(none?.form).not.toBe(form);
    expect(too?.form).toBe(none?.form);
    expect(none?.form?.columns.map(({ name }) => name)).toEqual(["width", "height"]);
    expect(none?.kept[4]).toBe(0);
  });

  it("hold their own numbers, of fewer columns too", () => {
    const forms = new Set<Form>();
    const [, none] = [usual, { ...usual, width: "20 ft", windows: 0 }].map((cells) => read(columns, cells, forms));
    expect(forms.size).toBe(2);
    expect(numbersOf(none?.form)).toEqual([[240], [108]]);
  });
});

describe("no form", () => {
  it.each<[what: string, cells: Cells]>([
    ["a name that is too long", { wall: "w".repeat(81) }], ["a name that is a number", { wall: 7 }], ["no name", { wall: "" }], ["a blank name", { wall: "  " }], ["a formula for a name", { wall: "=A1" }],
    ["a length without its unit", { width: "40" }], ["a volume for a length", { width: "9 gal" }], ["no length", { height: "" }], ["nothing", { height: undefined }], ["a formula", { width: "=B2" }], ["a list", { width: ["3 ft"] }],
    ["no word", { units: "" }], ["a word that is null", { units: null }], ["a word that is a list", { units: ["corner"] }], ["a quantity for a word", { units: quantity("count", 2) }], ["a formula for a word", { units: "=A1" }],
    ["a count that is none", { windows: "x" }], ["no count", { windows: undefined }],
  ])("has %s", (_, cells) => {
    expect(read(learned(), { ...usual, ...cells }).form).toBeUndefined();
  });

  it("but a name may have eighty letters", () => {
    expect(read(learned(), { ...usual, wall: "w".repeat(80) }).form).toBeDefined();
  });

  it("has what was put in a column's place by its prototype alone", () => {
    expect(read(learned(), Object.create(usual) as Cells).form).toBeUndefined();
  });
});

describe("a column that stands in two places", () => {
  const wall = { name: "3 ft", with: "3 ft", width: quantity("length", "3 ft"), height: quantity("length", "3 ft"), count: quantity("count", 3) };
  const places = (...keys: readonly (keyof typeof wall)[]): readonly { readonly column: string; readonly path: readonly string[] }[] => keys.map((key) => ({ column: "it", path: [key] }));

  function formFor(...learnt: readonly (readonly (keyof typeof wall)[])[]): Form | undefined {
    const columns = new WallColumns({ it: column("it") }, 8);
    for (const keys of learnt) columns.learn(places(...keys), wall);
    return read(columns, { it: "3 ft" }).form;
  }

  it("is read where both want the same of it, as often as it is learned", () => {
    expect(formFor(["width", "height"], ["width", "height"])?.columns).toEqual([{ name: "it", unit: "in" }]);
    expect(formFor(["name", "name"])?.columns).toEqual([]);
    expect(formFor(["with", "with"], ["with"])?.columns).toEqual([]);
  });

  it.each<[a: keyof typeof wall, b: keyof typeof wall]>([["width", "count"], ["count", "width"], ["name", "with"], ["with", "name"], ["name", "width"], ["width", "name"], ["with", "width"], ["width", "with"]])("is not where one is its %s and one its %s, whatever comes after", (a, b) => {
    expect(formFor([a, b])).toBeUndefined();
    expect(formFor([a], [b], [b])).toBeUndefined();
  });

  it("holds names where all of them are, and every name has the same form", () => {
    const columns = new WallColumns({ it: column("it") }, 8);
    columns.learn(places("name"), wall);
    expect(read(columns, { it: "east" }).form).toBe(read(columns, { it: "west" }).form);
  });
});

describe("so much is kept", () => {
  /** Two columns of words. */
  function words(): WallColumns {
    const columns = new WallColumns({ a: column("a"), b: column("b") }, 1);
    columns.learn([{ column: "a", path: ["a"] }, { column: "b", path: ["b"] }], { a: "x", b: "x" });
    return columns;
  }
  const has = (columns: WallColumns, a: unknown, b: unknown): boolean => read(columns, { a, b }).form !== undefined;
  const many = (count: number): readonly string[] => Array.from({ length: count }, (_, index) => `word ${String(index)}`);

  it("256 forms", () => {
    const columns = words();
    expect(many(300).map((word) => has(columns, "x", word)).lastIndexOf(true)).toBe(255);
    // Those that are known go on.
    expect(has(columns, "x", "word 255")).toBe(true);
  });

  it("4,000 steps on the way to a form", () => {
    const columns = words();
    // One step each, and no form: what stands in the second column is no word.
    for (const word of many(3998)) expect(has(columns, word, {})).toBe(false);
    expect(["word 0", "word 1", "word 2"].map((word) => has(columns, word, "x"))).toEqual([true, true, false]);
    expect(has(columns, "one more", "x")).toBe(false);
    expect(has(columns, "word 1", "x")).toBe(true);
  });

  it("and where no step is left, what is counted has no form either", () => {
    const columns = new WallColumns({ a: column("a"), caps: [{ count: column("caps"), name: "cap" }] }, 1);
    columns.learn([{ column: "a", path: ["a"] }, { column: "caps", path: ["caps", 0, "count"] }], { a: "x", caps: [{ count: quantity("count", 1) }] });
    for (const word of many(4000)) read(columns, { a: word, caps: "x" });
    expect([0, 1].map((caps) => read(columns, { a: "word 3999", caps }).form)).toEqual([undefined, undefined]);
  });
});
