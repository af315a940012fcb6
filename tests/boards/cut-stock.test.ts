import { describe, expect, it } from "vitest";
import { cutStock } from "../../src/boards/cut-stock.js";
import { drawFrom } from "../support/random.js";
import { vector } from "../support/vectors.js";

type Answers = ReturnType<typeof cutStock>;

/** Each way of cutting as `2 x 144 in: 64 + 64, 15.75 left`. */
function drawn({ cuts }: Answers): readonly string[] {
  return cuts.map(({ pieces, stock, lengths, offcut }) => `${String(pieces)} x ${stock.toString()}: ${lengths.map((one) => String(one.toNumber("in"))).join(" + ")}, ${String(offcut.toNumber("in"))} left`);
}

const inches = (number: number): string => `${String(number)} in`;
const each = (...lengths: readonly number[]): { length: string; count: number }[] => lengths.map((length) => ({ length: inches(length), count: 1 }));

function problemsOf(input: unknown): readonly (readonly string[])[] {
  const tried = cutStock.try(input);
  return tried.ok ? [] : tried.problems.map(({ code, path }) => [code, path.join(".")]);
}

describe("cutStock", () => {
  it("cuts the track of the textbook from three pieces (Pearson, p. 199)", () => {
    // Top and bottom of 20 ft 8 in from 20 ft pieces: each run is one whole piece and 8 in; both 8 in from a third.
    const row = vector("textbook-track-3");
    const track = cutStock({ wanted: [{ length: "20 ft", count: 2 }, { length: "8 in", count: 2 }], stock: ["20 ft"], sawCut: "0 in" });
    expect(String(track.cuts.reduce((sum, { pieces }) => sum + pieces, 0))).toBe(row.expected.pieces);
    expect(drawn(track)).toEqual(["2 x 240 in: 240, 0 left", "1 x 240 in: 8 + 8, 224 left"]);
  });

  it("betters first fit where that is not the best", () => {
    // 5, 4, 4, 3, 2 and 2 in into 10 in. First fit, longest first: 5 + 4, 4 + 3 + 2, 2, three pieces. They are 20 in all, so
    // two pieces do if both are filled: 4 + 4 + 2 and 5 + 3 + 2.
    const cutting = cutStock({ wanted: each(5, 4, 4, 3, 2, 2), stock: ["10 in"], sawCut: "0 in" });
    expect(cutting.cuts.map(({ offcut }) => offcut.toString())).toEqual(["0 in", "0 in"]);
    expect([cutting.stockLength.to("in").toString(), cutting.proven]).toEqual(["20", true]);
  });

  it("counts a saw cut after each length, but none after the last where it ends the piece", () => {
    const two = { wanted: [{ length: "60 in", count: 2 }], stock: ["120 in"] };
    expect(drawn(cutStock({ ...two, sawCut: "0 in" }))).toEqual(["1 x 120 in: 60 + 60, 0 left"]);
    // 60 + 1/8 + 60 is more than 120.
    expect(drawn(cutStock({ ...two, sawCut: "1/8 in" }))).toEqual(["2 x 120 in: 60, 59.875 left"]);
    // 59-15/16 twice and one cut between them is 120 exactly.
    expect(drawn(cutStock({ wanted: [{ length: "59-15/16 in", count: 2 }], stock: ["120 in"], sawCut: "1/8 in" }))).toEqual(["1 x 120 in: 59.9375 + 59.9375, 0 left"]);
    // Less than a cut is left: the saw takes it.
    const narrow = cutStock({ wanted: [{ length: "59.9 in", count: 2 }], stock: ["120 in"], sawCut: "1/8 in" });
    expect([narrow.offcuts, narrow.sawn, narrow.wantedLength].map((length) => length.to("in").toString())).toEqual(["0", "0.2", "119.8"]);
  });

  it("chooses between stock lengths, and takes fewer pieces of the same length in all", () => {
    // Four of 64 in and two of 50 in are 356 in: more than two of 144 in, so three pieces at least. Three of 120 in will not
    // do: four of 64 in come to lie two in one piece, 128 in. So at least 144 + 120 + 120 = 384 in = 32 ft, and that does:
    // 64 + 64, 64 + 50, 64 + 50.
    const cutting = cutStock({ wanted: [{ length: "64 in", count: 4 }, { length: "50 in", count: 2 }], stock: ["10 ft", "12 ft"], sawCut: "1/8 in" });
    expect(cutting.stockLength.toString()).toBe("32 ft");
    expect(cutting.needed.map(({ stock, pieces }) => [stock.toString(), pieces])).toEqual([["144 in", 1], ["120 in", 2]]);
    expect(cutting.proven).toBe(true);
    // 10 and 12 ft add up to even feet only: 356 in and six cuts of 1/8 in but the last ones need more than 28 ft, so 30 at least.
    expect(cutting.leastStockLength.toString()).toBe("30 ft");
    expect(drawn(cutting)).toEqual(["1 x 144 in: 64 + 64, 15.75 left", "2 x 120 in: 64 + 50, 5.75 left"]);
    expect([cutting.wantedLength, cutting.offcuts, cutting.sawn].map((length) => length.to("in").toString())).toEqual(["356", "27.25", "0.75"]);
    // One 16 in, or two of 8 in: the same stock, but one piece to carry.
    expect(drawn(cutStock({ wanted: each(8, 8), stock: ["8 in", "16 in"], sawCut: "0 in" }))).toEqual(["1 x 16 in: 8 + 8, 0 left"]);
  });

  it("knows that no stock is less than its share of the shortest, in what the lengths to buy add up to", () => {
    // 6 in and a cut of 1 in take up 7 of the 8 in that 7 in of stock have room for: 7/8 of 7 in is 6-1/8 in, and 7 and 10 in add
    // up to whole inches, so 7 in.
    expect(cutStock({ wanted: [{ length: "6 in", count: 1 }], stock: ["7 in", "10 in"], sawCut: "1 in" }).leastStockLength.to("in").toString()).toBe("7");
  });

  it("is exact: thirds and tenths fill a piece", () => {
    const thirds = cutStock({ wanted: [{ length: "1/3 in", count: 3 }, { length: "0.1 in", count: 10 }], stock: ["1 in"], sawCut: "0 in" });
    expect([thirds.stockLength.to("in").toString(), thirds.offcuts.toString()]).toEqual(["2", "0 ft"]);
    const metric = cutStock({ wanted: [{ length: "1.1 m", count: 3 }], stock: ["3.3 m"], sawCut: "0 mm" });
    expect([metric.stockLength.toString(), metric.cuts[0]?.lengths.map(String).join()]).toEqual(["3.3 m", "1100 mm,1100 mm,1100 mm"]);
  });

  it("cannot be bettered by hand: every way of sharing small jobs out is looked at", () => {
    const { whole: pick } = drawFrom(4711);
    for (let round = 0; round < 300; round += 1) {
      const stock = Array.from({ length: pick(1, 3) }, () => pick(10, 30));
      const lengths = Array.from({ length: pick(1, 7) }, () => pick(1, Math.max(...stock)));
      const sawCut = pick(0, 2);
      const cutting = cutStock({ wanted: each(...lengths), stock: stock.map(inches), sawCut: inches(sawCut) });
      expect([cutting.proven, cutting.stockLength.to("in").toNumber()], JSON.stringify({ stock, lengths, sawCut })).toEqual([true, leastByHand(lengths, stock, sawCut).length]);
      expect(cutting.needed.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(leastByHand(lengths, stock, sawCut).pieces);
      expect(cutting.leastStockLength.to("in").toNumber()).toBeLessThanOrEqual(cutting.stockLength.to("in").toNumber());
      checkCuts(cutting, lengths, sawCut);
    }
  });

  it("sees at once that nothing can be better where every piece is filled", () => {
    // Twenty each of 80, 70, 60, 50 and 40 in: 80 + 40, 70 + 50 and 60 + 60 fill 50 pieces of 120 in.
    const filled = cutStock({ wanted: [80, 70, 60, 50, 40].map((length) => ({ length: inches(length), count: 20 })), stock: ["120 in"], sawCut: "0 in" });
    expect(drawn(filled)).toEqual(["20 x 120 in: 80 + 40, 0 left", "20 x 120 in: 70 + 50, 0 left", "10 x 120 in: 60 + 60, 0 left"]);
    expect([filled.proven, filled.stockLength.toString(), filled.leastStockLength.toString()]).toEqual([true, "500 ft", "500 ft"]);
    expect(cutStock.solve({ wanted: [{ length: "60 in", count: 2 }], stock: ["120 in"], sawCut: "0 in" }).cautions.join(" ")).not.toContain("too many ways of cutting");
  });

  it("says when it has not looked at all ways, and is still not above its own first fit", () => {
    const many = Array.from({ length: 40 }, (_, index) => ({ length: inches(17 + ((index * 37) % 61)), count: 1 + (index % 5) }));
    const all = many.flatMap(({ length, count }) => Array<number>(count).fill(Number(length.replace(" in", ""))));
    const worked = cutStock.solve({ wanted: many, stock: ["96 in", "120 in", "144 in"], sawCut: "1/8 in" });
    const { proven, leastStockLength, stockLength } = worked.answers;
    expect(stockLength.toNumber("in")).toBeGreaterThanOrEqual(leastStockLength.toNumber("in"));
    expect(proven).toBe(false);
    expect(worked.cautions.join(" ")).toContain("too many ways of cutting");
    // No worse than first fit, longest first, from the longest stock, each piece exchanged for the shortest that holds it.
    expect(stockLength.toNumber("in")).toBeLessThanOrEqual(firstFitByHand(all, [96, 120, 144], 0.125));
    checkCuts(worked.answers, all, 0.125);
  });

  it("looks at 100,000 ways of filling on, and at no more", () => {
    // Three of 501 in from 1,000 in take three pieces, though they and the small ones are less than two; so ways are looked at.
    // The first piece holds one of 501 in and any share of the small ones: there are 2 + a + ab + abc + ... ways to fill on, where
    // a, b, c are one more than how many of each small length are wanted, the longest first. Only all of them leave no room.
    const ways = (counts: readonly number[]): number => 2 + counts.reduceRight((inner, count) => (count + 1) * (1 + inner), 0);
    const cut = (counts: readonly number[]): Answers =>
      cutStock({ wanted: [{ length: "501 in", count: 3 }, ...counts.map((count, index) => ({ length: inches(6 - index), count }))], stock: ["1000 in"], sawCut: "0 in" });
    const [within, beyond] = [[1, 5, 3, 5, 1, 171], [2, 3, 3, 5, 1, 171]];
    expect([ways(within), ways(beyond)]).toEqual([100_000, 100_001]);
    expect([cut(within).proven, cut(beyond).proven]).toEqual([true, false]);
    expect([cut(within), cut(beyond)].map(({ needed }) => needed[0]?.pieces)).toEqual([3, 3]);
  });

  it("refuses what no stock holds, nought, parts of a piece and empty lists, all at once", () => {
    expect(problemsOf({ wanted: [{ length: "11 ft", count: 2 }, { length: "1 ft", count: 1.5 }, { length: "121 in", count: 1 }], stock: ["10 ft"], sawCut: "0 in" })).toEqual([
      ["refused", "wanted.0.length"],
      ["refused", "wanted.1.count"],
      ["refused", "wanted.2.length"],
    ]);
    expect(problemsOf({ wanted: [{ length: "0 ft", count: 0 }], stock: ["0 ft"], sawCut: "-1 in" }).map(([, path]) => path)).toEqual(["wanted.0.length", "wanted.0.count", "stock.0", "sawCut"]);
    expect(problemsOf({ wanted: [], stock: [], sawCut: "0 in" })).toEqual([["refused", "wanted"], ["refused", "stock"]]);
    expect(problemsOf({ wanted: Array(3).fill({ length: "1 ft", count: 700 }), stock: ["10 ft"], sawCut: "0 in" })).toEqual([["refused", "wanted"]]);
    expect(problemsOf({ wanted: [{ length: "10 ft", count: 1000 }], stock: ["10 ft"], sawCut: "1/8 in" })).toEqual([]);
  });
});

const shortestFor = (bin: readonly number[], stock: readonly number[], sawCut: number): number =>
  Math.min(...stock.filter((one) => bin.reduce((sum, length) => sum + length, 0) + sawCut * (bin.length - 1) <= one));

/** The least stock length and then the fewest pieces, by putting each length into every piece opened so far or a new one. */
function leastByHand(lengths: readonly number[], stock: readonly number[], sawCut: number): { readonly length: number; readonly pieces: number } {
  let best = { length: Number.POSITIVE_INFINITY, pieces: 0 };
  const share = (index: number, bins: readonly (readonly number[])[]): void => {
    const length = lengths[index];
    if (length === undefined) {
      const all = bins.reduce((sum, bin) => sum + shortestFor(bin, stock, sawCut), 0);
      if (all < best.length || (all === best.length && bins.length < best.pieces)) best = { length: all, pieces: bins.length };
      return;
    }
    bins.forEach((_, at) => {
      share(index + 1, bins.map((bin, other) => (other === at ? [...bin, length] : bin)));
    });
    share(index + 1, [...bins, [length]]);
  };
  share(0, []);
  return best;
}

function firstFitByHand(lengths: readonly number[], stock: readonly number[], sawCut: number): number {
  const bins: number[][] = [];
  for (const length of [...lengths].sort((a, b) => b - a)) {
    const bin = bins.find((one) => Number.isFinite(shortestFor([...one, length], stock, sawCut)));
    if (bin === undefined) bins.push([length]);
    else bin.push(length);
  }
  return bins.reduce((sum, bin) => sum + shortestFor(bin, stock, sawCut), 0);
}

/** Every length is there, every piece holds what is cut from it, and nothing is lost but by the saw. */
function checkCuts(cutting: Answers, lengths: readonly number[], sawCut: number): void {
  const cut = cutting.cuts.flatMap(({ pieces, lengths: list }) => Array.from({ length: pieces }, () => list.map((length) => length.to("in").toNumber())).flat());
  expect(cut.sort((a, b) => a - b)).toEqual([...lengths].sort((a, b) => a - b));
  for (const { stock, lengths: list, offcut } of cutting.cuts) {
    const rest = stock.to("in").toNumber() - list.reduce((sum, length) => sum + length.to("in").toNumber(), 0) - sawCut * (list.length - 1);
    expect(rest).toBeGreaterThanOrEqual(0);
    expect(offcut.to("in").toNumber()).toBe(Math.max(0, rest - sawCut));
  }
  const { stockLength, wantedLength, offcuts, sawn } = cutting;
  expect(stockLength.to("in").minus(wantedLength.to("in")).minus(offcuts.to("in")).minus(sawn.to("in")).abs().lt("1e-30")).toBe(true);
}
