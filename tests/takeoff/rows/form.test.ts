// Rows of one form and the traces that work them out: each trace is run on those that the ones before it left, and so few
// times as can be. The traces here only remember what they were run on.
import { describe, expect, it } from "vitest";
import { Form } from "../../../src/takeoff/rows/form.js";
import type { TracedWall } from "../../../src/takeoff/rows/traced-wall.js";

/** What a trace was run on: by column the numbers it was handed, and how many rows of them count. */
interface Run {
  readonly numbers: readonly (readonly number[])[];
  readonly count: number;
}

/** A trace that holds for rows whose first number is one of these. */
function holdsFor(...held: readonly number[]): { readonly wall: TracedWall; readonly runs: Run[] } {
  const runs: Run[] = [];
  const wall = {
    run: (numbers: readonly Float64Array[], count: number) => void runs.push({ numbers: numbers.map((some) => [...some]), count }),
    rows: { holds: (place: number) => held.includes(runs.at(-1)?.numbers[0]?.[place] ?? NaN) },
  };
  return { wall: wall as unknown as TracedWall, runs };
}

const columns = [{ name: "width", unit: "ft" }, { name: "height", unit: "ft" }] as const;

/** A form with room for four rows, and so many of them. */
function formOf(...rows: readonly (readonly number[])[]): Form {
  const form = new Form(columns, 4);
  for (const row of rows) form.add(row);
  return form;
}

describe("a block", () => {
  const rows = [[2, 20], [3, 30], [4, 40], [5, 50]];

  it("gives its rows places in turn, and begins anew", () => {
    const form = formOf();
    expect(form.columns).toBe(columns);
    expect([form.add([2, 20]), form.add([3, 30])]).toEqual([0, 1]);
    form.clear();
    expect(form.add([4, 40])).toBe(0);
  });

  it("goes through the traces, each with the rows that are left", () => {
    const form = formOf(...rows);
    const [even, three, none] = [holdsFor(2, 4), holdsFor(3), holdsFor()];
    for (const { wall } of [even, three, none]) expect(form.learn(() => wall)).toBe(true);
    form.run();
    expect(even.runs).toEqual([{ numbers: [[2, 3, 4, 5], [20, 30, 40, 50]], count: 4 }]);
    expect(three.runs).toEqual([{ numbers: [[3, 5], [30, 50]], count: 2 }]);
    expect(none.runs).toEqual([{ numbers: [[5], [50]], count: 1 }]);
    expect([0, 1, 2, 3].map((at) => form.wallOf(at))).toEqual([even.wall, three.wall, even.wall, undefined]);
    expect([0, 1, 2].map((at) => form.placeOf(at))).toEqual([0, 0, 2]);
  });

  it("asks no trace where no row is left", () => {
    const form = formOf(...rows);
    const [all, more] = [holdsFor(2, 3, 4, 5), holdsFor(2)];
    for (const { wall } of [all, more]) form.learn(() => wall);
    form.run();
    form.clear();
    form.run();
    expect([all.runs.length, more.runs.length]).toEqual([1, 0]);
  });

  it("knows nothing of the block before", () => {
    const form = formOf(...rows);
    const all = holdsFor(2, 3, 4, 5);
    form.learn(() => all.wall);
    form.run();
    form.clear();
    form.add([9, 90]);
    form.run();
    expect(all.runs[1]?.count).toBe(1);
    expect(form.wallOf(0)).toBeUndefined();
  });
});

describe("a trace that came since the block was begun", () => {
  it("is tried on a row by itself, and those before it are not tried again", () => {
    const form = formOf([2, 20], [3, 30], [4, 40]);
    const before = holdsFor();
    form.learn(() => before.wall);
    form.run();
    expect(form.wallOf(0)).toBeUndefined();
    const since = holdsFor(3);
    form.learn(() => since.wall);
    expect([form.wallOf(1), form.wallOf(2)]).toEqual([since.wall, undefined]);
    expect(form.placeOf(1)).toBe(0);
    expect(since.runs).toEqual([{ numbers: [[3], [30]], count: 1 }, { numbers: [[4], [40]], count: 1 }]);
    expect(before.runs).toHaveLength(1);
  });

  it("may be the first one, before any run", () => {
    const form = formOf([2, 20]);
    const since = holdsFor(2);
    form.learn(() => since.wall);
    expect(form.wallOf(0)).toBe(since.wall);
  });

  it("has the row at its first place, wherever it was in the block before", () => {
    const form = formOf([2, 20], [3, 30], [4, 40]);
    const before = holdsFor(2, 3, 4);
    form.learn(() => before.wall);
    form.run();
    expect(form.placeOf(2)).toBe(2);
    form.clear();
    for (const row of [[2, 20], [3, 30], [9, 90]]) form.add(row);
    form.run();
    const since = holdsFor(9);
    form.learn(() => since.wall);
    expect([form.wallOf(2), form.placeOf(2)]).toEqual([since.wall, 0]);
  });
});

describe("so many traces are made", () => {
  /** How often a trace was asked for, of so many times, where all of them or none can be made. */
  function asked(times: number, wall: TracedWall | undefined): readonly [asked: number, learnt: number] {
    const form = formOf();
    let [asks, learnt] = [0, 0];
    for (let time = 0; time < times; time += 1) {
      learnt += Number(form.learn(() => {
        asks += 1;
        return wall;
      }));
    }
    return [asks, learnt];
  }

  it("eight of one form", () => {
    expect(asked(20, holdsFor().wall)).toEqual([8, 8]);
  });

  it("none after three that could not be", () => {
    expect(asked(20, undefined)).toEqual([3, 0]);
  });
});
