// Totals over rows: those that were taken off by themselves, those that were worked out in a trace, and those that were
// refused. Lists and traces are written by hand here.
import { describe, expect, it } from "vitest";
import { Decimal, exact } from "../../../src/core/amount.js";
import { quantity, type Quantity } from "../../../src/core/index.js";
import { type ItemTotal, Totals } from "../../../src/takeoff/rows/row-totals.js";
import type { TracedItem, TracedWall } from "../../../src/takeoff/rows/traced-wall.js";
import type { TakeOff } from "../../../src/takeoff/take-job.js";

interface Line {
  readonly item: string;
  readonly net: Quantity;
  readonly toOrder: Quantity;
  readonly packs?: Quantity<"count">;
}

const count = (number: number): Quantity<"count"> => quantity("count", number);
const foam = (net: number, packs: number): Line => ({ item: "foam", net: count(net), toOrder: count(packs), packs: count(packs) });
/** Counted, but not sold in packs. */
const clips = (net: number): Line => ({ item: "clips", net: count(net), toOrder: count(net + 1) });
const sealant = (net: Quantity<"volume">): Line => ({ item: "sealant", net, toOrder: net });

function takeOffOf(lines: readonly Line[], cost?: string): TakeOff {
  return { lines, ...(cost === undefined ? {} : { cost: { amounts: { total: new Decimal(cost) } } }) } as unknown as TakeOff;
}

/** A trace of which every figure is so much in every row. */
function wallOf(items: readonly TracedItem[], figures: readonly number[], cost?: number): { readonly wall: TracedWall; readonly called: () => number } {
  let calls = 0;
  const rows = { isExact: () => true, wholeOf: (figure: number) => ({ values: Float64Array.of(figures[figure] ?? NaN, 0), scale: exact(1n) }) };
  const wall = { items, cost, rows, beforeNext: () => void (calls += 1) };
  return { wall: wall as unknown as TracedWall, called: () => calls };
}

const plain = (items: readonly ItemTotal[]): unknown => items.map(({ item, net, packs }) => [item, net.toString(), packs?.toString()]);
const cent = { amount: new Decimal("0.01"), currency: "USD" };

describe("rows by themselves", () => {
  it("add up by item, in the unit of the first row that has it", () => {
    const totals = new Totals(undefined);
    totals.add(takeOffOf([foam(9.5, 11), sealant(quantity("volume", "2 gal"))]));
    totals.add(takeOffOf([sealant(quantity("volume", "4 qt")), clips(6), foam(4.25, 5)]));
    const { rows, refused, items, ...cost } = totals.sofar;
    expect([rows, refused, cost]).toEqual([2, 0, {}]);
    // 9.5 + 4.25; 11 + 5; 2 gal + 4 qt = 3 gal; what is not sold in packs is bought piece by piece: 6 + 1
    expect(plain(items)).toEqual([["foam", "13.75", "16"], ["sealant", "3 gal", undefined], ["clips", "6", "7"]]);
    expect(items.map((one) => "packs" in one)).toEqual([true, false, true]);
    expect(items[1]?.net.dimension).toBe("volume");
  });

  it("add up what they cost, with the places of the smallest amount", () => {
    const totals = new Totals(cent);
    expect(totals.sofar).toStrictEqual({ rows: 0, refused: 0, items: [] });
    totals.add(takeOffOf([], "12.5"));
    totals.add(takeOffOf([], "0.75"));
    expect(totals.sofar).toStrictEqual({ rows: 2, refused: 0, items: [], cost: "13.25 USD" });
  });

  it("have no cost without a smallest amount", () => {
    const totals = new Totals(undefined);
    totals.add(takeOffOf([], "12.5"));
    expect(totals.sofar).toStrictEqual({ rows: 1, refused: 0, items: [] });
  });

  it("count those that are refused", () => {
    const totals = new Totals(undefined);
    totals.refuse();
    totals.add(takeOffOf([]));
    totals.refuse();
    expect(totals.counts).toEqual({ rows: 3, refused: 2 });
  });
});

describe("rows of a trace", () => {
  const items = [{ item: "foam", net: 0, bought: 1 }, { item: "sealant", net: 2, bought: undefined }];

  it("are known once all of its items have come", () => {
    const totals = new Totals(undefined);
    const { wall } = wallOf(items, []);
    expect(totals.knows(wall)).toBe(false);
    totals.add(takeOffOf([foam(1, 1)]));
    expect(totals.knows(wall)).toBe(false);
    expect(() => { totals.addTraced(wall, 0); }).toThrow("sealant has not come before");
    totals.add(takeOffOf([sealant(quantity("volume", "1 gal"))]));
    expect(totals.knows(wall)).toBe(true);
    totals.addTraced(wall, 0);
    expect(totals.knows(wall)).toBe(true);
  });

  it("add up with the others", () => {
    const totals = new Totals(cent);
    totals.add(takeOffOf([foam(9.5, 11), sealant(quantity("volume", "1 m3"))], "10.00"));
    const { wall, called } = wallOf(items, [3, 4, 2, 5], 3);
    totals.addTraced(wall, 0);
    totals.addTraced(wall, 0);
    expect(called()).toBe(1);
    const { rows, refused, items: found, cost } = totals.sofar;
    // 9.5 + 2 * 3, 11 + 2 * 4, 1 m3 + 2 * 2 m3, 10 + 2 * 5
    expect([rows, refused, cost]).toEqual([3, 0, "20.00 USD"]);
    expect(plain(found)).toEqual([["foam", "15.5", "19"], ["sealant", "5 m3", undefined]]);
    expect("packs" in (found[1] ?? {})).toBe(false);
    // What has been told is not told twice.
    expect(totals.sofar.cost).toBe("20.00 USD");
  });

  it("bring a cost though no row by itself had one", () => {
    const totals = new Totals(cent);
    totals.add(takeOffOf([foam(1, 1), sealant(quantity("volume", "1 m3"))]));
    totals.addTraced(wallOf(items, [3, 4, 2, 5], 3).wall, 0);
    expect(totals.sofar.cost).toBe("5.00 USD");
  });

  it("bring none where the trace has none", () => {
    const totals = new Totals(cent);
    totals.add(takeOffOf([foam(1, 1), sealant(quantity("volume", "1 m3"))]));
    totals.addTraced(wallOf(items, [3, 4, 2, 5]).wall, 0);
    expect("cost" in totals.sofar).toBe(false);
  });
});
