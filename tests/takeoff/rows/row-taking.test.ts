// Rows taken off block by block: how few of them are worked out by themselves, when others get their turn, and how rows are
// numbered and named. What a wall takes is told in foam-wall.ts.
import { describe, expect, it, vi } from "vitest";
import { InputError } from "../../../src/core/index.js";
import { problem } from "../../../src/core/problems.js";
import { type Cells, takeOffRows, type TakenRow, type WallPattern } from "../../../src/takeoff/index.js";
import { RowTaking } from "../../../src/takeoff/rows/row-taking.js";
import { Totals } from "../../../src/takeoff/rows/row-totals.js";
import type { WallRow } from "../../../src/takeoff/rows/row-types.js";
import { foamAssembly, foamAssemblyRead, foamWall } from "./foam-wall.js";

/** How often a wall was traced, how often what was traced was run, and whether it is to hold for no row. */
const traces = vi.hoisted(() => ({ made: 0, run: 0, holdForNone: false }));

vi.mock(import("../../../src/takeoff/rows/traced-wall.js"), async (original) => {
  const { traceWall, ...rest } = await original();
  const counted: typeof traceWall = (...given) => {
    traces.made += 1;
    const wall = traceWall(...given);
    if (wall === undefined) return wall;
    if (traces.holdForNone) return Object.assign(Object.create(wall) as typeof wall, { run: () => undefined, rows: { holds: () => false } });
    const run = wall.run.bind(wall);
    wall.run = (numbers, count) => {
      traces.run += 1;
      run(numbers, count);
    };
    return wall;
  };
  return { ...rest, traceWall: counted };
});

interface Taken {
  readonly rows: readonly TakenRow[];
  readonly traces: number;
  readonly runs: number;
}

async function all(rows: Iterable<WallRow> | AsyncIterable<WallRow>, wall = foamWall, assembly = foamAssembly): Promise<Taken> {
  [traces.made, traces.run] = [0, 0];
  const taken: TakenRow[] = [];
  for await (const one of takeOffRows(rows, { assembly, wall })) {
    taken.push(one);
    if (taken.length > 1000) throw new Error("there is no end of rows");
  }
  return { rows: taken, traces: traces.made, runs: traces.run };
}

const wide = (feet: number, more: Cells = {}): Cells => ({ wall: `${String(feet)} ft wide`, width: `${String(feet)} ft`, height: "8 ft", ...more });
/** The boards of a row. */
const boards = (row: TakenRow | undefined): number | undefined => (row?.ok === true ? row.lines[0]?.packs : undefined);
/** The boards of a wall 8 ft high and so wide: a quarter of a board a foot, and a tenth more. */
const boardsFor = (feet: number): number => Math.ceil((feet * 11) / 40);

describe("rows that are alike", () => {
  it("are traced once, however many there are", async () => {
    const widths = Array.from({ length: 700 }, (_, index) => 10 + (index % 90));
    const { rows, traces: made, runs } = await all(widths.map((width) => wide(width)));
    // The second row is traced and the third, of the same block, run by itself; then blocks of 4, 8, 16, 32, 64, 128, 256 and the rest.
    expect([made, runs]).toEqual([1, 9]);
    expect(rows.map(boards)).toEqual(widths.map(boardsFor));
  });

  it("are traced once where they come one by one too", async () => {
    async function* late(): AsyncGenerator<Cells> {
      for (const width of [10, 20, 30, 40, 50]) yield await Promise.resolve(wide(width));
    }
    const { rows, traces: made } = await all(late());
    expect([made, rows.map(boards)]).toEqual([1, [3, 6, 9, 11, 14]]);
  });

  it("are not traced where there is one of them", async () => {
    // Of the first row it is not known yet what its columns hold.
    expect((await all([wide(10)])).traces).toBe(0);
  });

  it("have the name of the wall where that is the same in all rows", async () => {
    const { rows } = await all([10, 20, 30, 40].map((width) => wide(width)), { ...(foamWall as { readonly [key: string]: WallPattern }), name: "one name" });
    expect(rows.map((row) => row.ok && row.name)).toEqual(Array.from({ length: 4 }, () => "one name"));
  });

  it("have each its own name", async () => {
    const { rows } = await all([10, 20, 30, 40].map((width) => wide(width)));
    expect(rows.map((row) => row.ok && row.name)).toEqual(["10 ft wide", "20 ft wide", "30 ft wide", "40 ft wide"]);
  });
});

it("256 traces are made at the most", async () => {
  const lengths = ["20 ft", "7 yd", "6 m", "240000 mil"];
  const corners = [0, 1].flatMap((a) => [0, 1].map((b) => ({ a, b })));
  const corner = (count: string): WallPattern => ({ height: "8 ft", otherFace: "unclad", count: { column: count } });
  const wall = { ...(foamWall as { readonly [key: string]: WallPattern }), outsideCorners: [corner("a"), corner("b")] };
  // 64 forms: each asks for no more than eight traces, together they would for 512.
  const forms = lengths.flatMap((width) => lengths.flatMap((height) => corners.map((counts): Cells => ({ wall: "east", width, height, ...counts }))));
  const { measuredTo, layers, packs, allowances } = foamAssembly;
  traces.holdForNone = true;
  try {
    const { rows, traces: made } = await all(Array.from({ length: 8 }, () => forms).flat(), wall, { measuredTo, layers: layers.slice(0, 1), packs, allowances });
    expect(rows.filter(({ ok }) => !ok)).toEqual([]);
    expect(made).toBe(256);
  } finally {
    traces.holdForNone = false;
  }
});

describe("a turn", () => {
  /** Takes rows while the clock stands where it is put. */
  function taking(): { readonly of: RowTaking; readonly clock: { now: number }; readonly end: () => void } {
    const clock = { now: 1000 };
    const real = Date.now;
    Date.now = () => clock.now;
    const of = new RowTaking(foamAssemblyRead, { assembly: foamAssembly, wall: foamWall }, new Totals(undefined));
    return { of, clock, end: () => { Date.now = real; } };
  }

  it("is over after 50 ms, and begins anew", () => {
    const { of, clock, end } = taking();
    try {
      const due = (now: number): boolean => {
        clock.now = now;
        return of.isDue;
      };
      expect([due(1000), due(1049), due(1050)]).toEqual([false, false, true]);
      of.goOn();
      expect([due(1050), due(1099), due(1100)]).toEqual([false, false, true]);
    } finally {
      end();
    }
  });

  it("ends after the row at hand, and the next goes on from there", () => {
    const { of, clock, end } = taking();
    try {
      expect(of.isDone).toBe(true);
      of.read([wide(10), wide(20), wide(30)]);
      expect(of.isDone).toBe(false);
      const rows = of.rows();
      expect([rows.next().value].map((row) => row?.row)).toEqual([2]);
      clock.now = 1050;
      expect([...rows].map(({ row }) => row)).toEqual([]);
      expect(of.isDone).toBe(false);
      expect([...of.rows()].map(({ row }) => row)).toEqual([3]);
      of.goOn();
      expect([...of.rows()].map(({ row }) => row)).toEqual([4]);
      expect(of.isDone).toBe(true);
      expect([...of.rows()]).toEqual([]);
      // The next block goes on counting.
      of.read([wide(10), wide(20), wide(30)]);
      expect(of.isDone).toBe(false);
      expect([...of.rows()].map(({ row }) => row)).toEqual([5, 6, 7]);
    } finally {
      end();
    }
  });
});

describe("rows are numbered", () => {
  const torn = [problem({ code: "refused", path: [], given: "", wanted: "no more" })];

  it("from those that tell their number, right or wrong", async () => {
    const { rows } = await all([wide(10), { row: 7, cells: wide(20) }, wide(30), { row: 20, problems: torn }, wide(40), null as never, { row: 30, value: wide(50) }]);
    expect(rows.map(({ row, ok }) => [row, ok])).toEqual([[2, true], [7, true], [8, true], [20, false], [21, true], [22, false], [30, true]]);
  });

  it("to the one that cannot be read any further", async () => {
    function* source(): Generator<Cells> {
      yield wide(10);
      yield wide(20);
      throw new InputError("a sheet", torn);
    }
    const taken = takeOffRows(source(), { assembly: foamAssembly, wall: foamWall });
    const rows: TakenRow[] = [];
    for await (const one of taken) rows.push(one);
    expect(rows.map(({ row, ok }) => [row, ok])).toEqual([[2, true], [3, true], [4, false]]);
    expect(rows.at(-1)).toMatchObject({ problems: torn });
    expect([taken.totals().rows, taken.totals().refused]).toEqual([3, 1]);
  });
});

describe("a row that is wrong", () => {
  it("says of a cell what is wrong with it, not what its text reads as, and of the others all", async () => {
    const { rows: [row] } = await all([{ wall: "=A1", width: "=A2", height: "8 gal" }]);
    if (row === undefined || row.ok) throw new Error("the row is wrong");
    expect(row.problems.map(({ code, path }) => [code, path])).toEqual([["refused", ["rows", 2, "wall"]], ["refused", ["rows", 2, "width"]], ["wrongDimension", ["rows", 2, "height"]]]);
    expect([Object.isFrozen(row), Object.isFrozen(row.problems)]).toEqual([true, true]);
  });

  it("is refused for its name alone, and does not stand in the totals", async () => {
    const taken = takeOffRows([wide(10), wide(20, { wall: "@A1" }), wide(30)], { assembly: foamAssembly, wall: foamWall });
    const oks: boolean[] = [];
    for await (const one of taken) oks.push(one.ok);
    expect(oks).toEqual([true, false, true]);
    // 80 / 32 + 240 / 32
    expect(taken.totals().items[0]?.net.toString()).toBe("10");
  });

  it("is refused where its wall cannot be taken off, under the column that says so where there is one", async () => {
    const window: WallPattern = { shape: { kind: "rectangle", width: { column: "window" }, height: "4 ft" }, returnDepth: "0 in", returnUnits: "flat" };
    const corner: WallPattern = { height: "8 ft", otherFace: "unclad", with: { column: "round" } };
    const { rows: [row] } = await all([wide(10, { window: "12 ft", round: "west" })], { ...(foamWall as { readonly [key: string]: WallPattern }), openings: [window], outsideCorners: [corner] });
    if (row === undefined || row.ok) throw new Error("the row is wrong");
    // That a window is too wide lies in its width or in that of the wall; that no corner units are named, in the assembly.
    expect(row.problems.map(({ path }) => path)).toEqual([["rows", 2, "elevations", 0, "openings", 0, "shape"], ["rows", 2, "round"], ["rows", 2, "layers", 1, "corners"]]);
  });
});

describe("the working of a row that was worked out with others", () => {
  it("is that of its own cells, though they have been written over", async () => {
    const cells: Record<string, unknown>[] = [10, 20, 30, 40].map((width) => ({ ...wide(width) }));
    const { rows } = await all(cells);
    for (const one of cells) one.width = "1 ft";
    expect(rows.map((row) => row.ok && row.solution.answers.lines[0]?.packs?.toString())).toEqual(["3", "6", "9", "11"]);
    expect(rows.map((row) => row.ok && row.solution.answers.elevations.map(({ name }) => name))).toEqual([["10 ft wide"], ["20 ft wide"], ["30 ft wide"], ["40 ft wide"]]);
  });

  it("is refused where what stood in a cell has been changed within", async () => {
    const width = { value: 30, unit: "ft" };
    const { rows } = await all([wide(10), wide(20), wide(30, { width })]);
    width.unit = "gal";
    const last = rows[2];
    if (last?.ok !== true) throw new Error("the row is right");
    expect(boards(last)).toBe(9);
    expect(() => last.solution).toThrow(InputError);
  });
});
