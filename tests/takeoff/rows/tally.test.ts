// Rows of a trace on their way into sums: in plain numbers first as long as that is exact, and exactly where it is not. The
// trace here holds what it is told; the sums are worked out by hand.
import { describe, expect, it } from "vitest";
import { type Amount, exact, exactArithmetic, toDecimal } from "../../../src/core/amount.js";
import { ExactSum } from "../../../src/takeoff/rows/exact-sum.js";
import { Tally } from "../../../src/takeoff/rows/tally.js";
import type { TracedWall } from "../../../src/takeoff/rows/traced-wall.js";

/** A figure of a block: whole numbers of one scale, or amounts. */
type Figure = { readonly values: readonly number[]; readonly scale: Amount } | { readonly amounts: readonly Amount[] };

const rootOfTwo = exactArithmetic.sqrt(exact(2n));
const half = exact(1n, 2n);

/** A trace that holds one block after another; figures are exact unless told. */
class HeldBlocks {
  #before = (): void => undefined;
  #figures: readonly Figure[] = [];
  readonly #inexact: readonly number[];

  constructor(...inexact: readonly number[]) {
    this.#inexact = inexact;
  }

  /** Lets the block give way to another. */
  hold(...figures: readonly Figure[]): void {
    this.#before();
    this.#figures = figures;
  }

  get wall(): TracedWall {
    const figureAt = (figure: number): Figure => this.#figures[figure] ?? { amounts: [] };
    const rows = {
      isExact: (figure: number) => !this.#inexact.includes(figure),
      wholeOf(figure: number) {
        const held = figureAt(figure);
        return "values" in held ? { values: Float64Array.from(held.values), scale: held.scale } : undefined;
      },
      exactly(figure: number, place: number) {
        const held = figureAt(figure);
        if ("values" in held) throw new Error("whole numbers are not asked for one by one");
        return held.amounts[place];
      },
    };
    const beforeNext = (call: () => void): void => {
      this.#before = call;
    };
    return { rows, beforeNext } as unknown as TracedWall;
  }
}

/** A sum that counts how often something is added to it. */
class CountedSum extends ExactSum {
  added = 0;

  override add(amount: Amount): void {
    this.added += 1;
    super.add(amount);
  }
}

/** A tally of the first figure alone. */
function tallyOf(sum: ExactSum, ...inexact: readonly number[]): { readonly blocks: HeldBlocks; readonly tally: Tally } {
  const blocks = new HeldBlocks(...inexact);
  return { blocks, tally: new Tally(blocks.wall, [{ sum, figure: 0 }]) };
}

const told = (sum: ExactSum): string => String(sum.amount);

describe("whole numbers of one scale", () => {
  it("are added up first, and go into the sum once it is asked for", () => {
    const sum = new CountedSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [3, 5, 7], scale: half });
    tally.add(0);
    tally.add(2);
    expect([told(sum), sum.added]).toEqual(["0", 0]);
    tally.settle();
    // 3/2 + 7/2
    expect([told(sum), sum.added]).toEqual(["5", 1]);
    tally.settle();
    expect([told(sum), sum.added]).toEqual(["5", 1]);
    tally.add(1);
    tally.settle();
    // 5 + 5/2
    expect(told(sum)).toBe("15/2");
  });

  it("are counted before their block gives way to another, and from its first row again after that", () => {
    const sum = new CountedSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [3, 5], scale: half });
    tally.add(0);
    tally.add(1);
    blocks.hold({ values: [100, 200, 300], scale: half });
    for (const place of [0, 1, 2]) tally.add(place);
    blocks.hold({ values: [1000], scale: half });
    tally.add(0);
    expect(sum.added).toBe(0);
    tally.settle();
    // (3 + 5 + 100 + 200 + 300 + 1000) / 2, added in one go
    expect([told(sum), sum.added]).toEqual(["804", 1]);
  });

  it("go into the sum before those of another scale", () => {
    const sum = new ExactSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [3], scale: half });
    tally.add(0);
    blocks.hold({ values: [1, 1], scale: exact(1n, 3n) });
    tally.add(0);
    tally.add(1);
    tally.settle();
    // 3/2 + 2/3
    expect(told(sum)).toBe("13/6");
  });

  it("do so as well where a block between has none", () => {
    const sum = new ExactSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [3], scale: half });
    tally.add(0);
    blocks.hold({ amounts: [exact(1n, 3n), exact(1n, 5n)] });
    tally.add(0);
    tally.add(1);
    blocks.hold({ values: [1], scale: half });
    tally.add(0);
    tally.settle();
    // 3/2 + 1/3 + 1/5 + 1/2
    expect(told(sum)).toBe("38/15");
  });

  const largest = 2 ** 52;

  it.each([
    // 2^53 + 2 is no sum of ones in doubles: 2^53 + 1 = 2^53 there.
    [[largest, largest, 1, 1], 2n ** 53n + 2n],
    [[-largest, -largest, -1, -1], -(2n ** 53n) - 2n],
    [[largest, -1, largest, 1, 1], 2n ** 53n + 1n],
  ])("%j are added exactly", (values, expected) => {
    const sum = new ExactSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values, scale: exact(1n) });
    for (const place of values.keys()) tally.add(place);
    tally.settle();
    expect(told(sum)).toBe(String(expected));
  });

  it("stay plain numbers up to 2^52", () => {
    const sum = new CountedSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [largest - 1, 1, -5], scale: exact(1n) });
    for (const place of [0, 1, 2]) tally.add(place);
    tally.settle();
    expect([told(sum), sum.added]).toEqual([String(2n ** 52n - 5n), 1]);
  });

  it("that come to nought are not added", () => {
    const sum = new CountedSum();
    const { blocks, tally } = tallyOf(sum);
    tally.settle();
    blocks.hold({ values: [4, -4], scale: half });
    tally.add(0);
    tally.add(1);
    tally.settle();
    expect([told(sum), sum.added]).toEqual(["0", 0]);
  });
});

it("several figures go each into its own sum", () => {
  const [nets, packs] = [new ExactSum(), new ExactSum()];
  const blocks = new HeldBlocks();
  const tally = new Tally(blocks.wall, [{ sum: nets, figure: 1 }, { sum: packs, figure: 0 }]);
  blocks.hold({ values: [2, 3], scale: exact(1n) }, { values: [7, 9], scale: half });
  tally.add(1);
  tally.add(0);
  tally.settle();
  expect([told(nets), told(packs)]).toEqual(["8", "5"]);
});

describe("what is not exact", () => {
  it("is added row by row, and all else of its rows with it", () => {
    const [roots, wholes] = [new ExactSum(), new ExactSum()];
    const blocks = new HeldBlocks(0);
    const tally = new Tally(blocks.wall, [{ sum: roots, figure: 0 }, { sum: wholes, figure: 1 }]);
    blocks.hold({ amounts: [rootOfTwo, exact(1n)] }, { values: [3, 5], scale: half });
    tally.add(0);
    expect([toDecimal(roots.amount).toFixed(8), told(wholes)]).toEqual(["1.41421356", "3/2"]);
    tally.add(1);
    expect([toDecimal(roots.amount).toFixed(8), told(wholes)]).toEqual(["2.41421356", "4"]);
  });

  it("makes the sum one to which rows are added at once", () => {
    const sum = new ExactSum();
    sum.add(rootOfTwo);
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [3], scale: half });
    tally.add(0);
    expect(toDecimal(sum.amount).toFixed(8)).toBe("2.91421356");
  });

  it("takes in first what came before it, though that has not been asked for", () => {
    // 10^45 and a root do not go into 40 digits together.
    const large = exact(10n ** 45n);
    const sum = new ExactSum();
    const { blocks, tally } = tallyOf(sum);
    blocks.hold({ values: [1, 5], scale: large });
    sum.add(exact(-(10n ** 45n)));
    tally.add(0);
    sum.add(rootOfTwo);
    expect(exactArithmetic.compare(sum.amount, rootOfTwo)).toBe(0);
    tally.settle();
    expect(exactArithmetic.compare(sum.amount, rootOfTwo)).toBe(0);
    // From now on the order matters.
    tally.add(1);
    expect(toDecimal(sum.amount).toFixed(0)).toBe(`5${"0".repeat(45)}`);
  });
});
