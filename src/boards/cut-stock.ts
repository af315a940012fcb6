import * as z from "zod/mini";
import { common } from "../core/common-refusals.js";
import { composed, type Work } from "../core/composed.js";
import type { Trouble } from "../core/problems.js";
import type { Quantity } from "../core/quantity.js";
import { refusal, refuseAll } from "../core/refuse-all.js";
import { atFirstUse } from "../schema/at-first-use.js";
import { quantityField, telling } from "../schema/fields.js";
import { nested } from "../schema/nested.js";
import { bestCutting } from "./best-cutting.js";
import { costOf, type CuttingJob, leastCost, roomFor, type StockPiece } from "./cutting.js";
import { cuttingJobOf } from "./cutting-job.js";
import { exactLength, shownLike } from "../shapes/exact-length.js";
import { max } from "../shapes/face.js";
import { say } from "./refusals.js";

/** Pieces of stock that are cut alike. */
export interface StockCut {
  /** How many pieces of stock are cut so. */
  readonly pieces: number;
  readonly stock: Quantity<"length">;
  /** What each is cut into, the longest first. */
  readonly lengths: readonly Quantity<"length">[];
  /** What is left of each, after the saw. */
  readonly offcut: Quantity<"length">;
}

/** How many pieces of one stock length are needed. */
export interface StockNeeded {
  readonly stock: Quantity<"length">;
  readonly pieces: number;
}

/** Lengths cut from stock. */
export interface CutStock {
  readonly needed: readonly StockNeeded[];
  readonly cuts: readonly StockCut[];
  /** All stock that is used. */
  readonly stockLength: Quantity<"length">;
  /** All lengths that are wanted. */
  readonly wantedLength: Quantity<"length">;
  readonly offcuts: Quantity<"length">;
  /** What the saw takes. */
  readonly sawn: Quantity<"length">;
  /** What no way of cutting can go below: all stock used up, but for the saw. */
  readonly leastStockLength: Quantity<"length">;
  /** Whether no other way of cutting takes less stock, or the same in fewer pieces. */
  readonly proven: boolean;
}

const cutStockInput = /* @__PURE__ */ atFirstUse(() =>
  z.strictObject({
    wanted: telling("lengths to be cut", z.array(
      z.strictObject({
        length: quantityField("length", { says: "length to be cut", above: 0 }),
        count: quantityField("count", { says: "how many of the length", atLeast: "1", atMost: 1000 }),
      }),
    )),
    /** The lengths that can be bought. */
    stock: telling("lengths that can be bought", z.array(quantityField("length", { says: "length that can be bought", above: 0 }))),
    sawCut: quantityField("length", { says: "width that the saw takes at each cut", atLeast: 0 }),
  }));

/**
 * Cuts wanted lengths from stock lengths so that the least stock is bought: studs, tracks, screeds, caps, battens.
 *
 * @example
 * ```ts
 * const cutting = cutStock({
 *   wanted: [{ length: "64 in", count: 4 }, { length: "50 in", count: 2 }],
 *   stock: ["10 ft", "12 ft"],
 *   sawCut: "1/8 in",
 * });
 * cutting.stockLength.toString(); // "32 ft"
 * cutting.needed[1].pieces; // 2
 * cutting.proven; // true
 * ```
 */
export const cutStock = /* @__PURE__ */ composed({
  id: "boards.cut-stock",
  title: "Cutting of lengths from stock",
  reads: /* @__PURE__ */ nested(cutStockInput),
  run: cut,
});

/** Beyond these the search takes too long. */
const most = { wanted: 100, stock: 20, pieces: 2000 };

function cut(given: z.output<ReturnType<typeof cutStockInput>>, work: Work): CutStock {
  refuseAll(troublesOf(given), work);
  const wanted = given.wanted.map(({ length, count }) => ({ length: exactLength(length), count: count.toNumber() }));
  const { job, lengthOf } = cuttingJobOf(wanted, given.stock.map(exactLength), exactLength(given.sawCut));
  const { pieces, proven } = bestCutting(job);
  const show = shownLike(given.stock[0] as Quantity<"length">);
  const size = (parts: bigint): Quantity<"length"> => show.length(lengthOf(parts));
  const run = (parts: bigint): Quantity<"length"> => show.run(lengthOf(parts));
  const { length: used } = costOf(pieces);
  const net = job.lengths.reduce((sum, length, index) => sum + length * BigInt(job.counts[index] ?? 0), 0n);
  const offcuts = pieces.reduce((sum, piece) => sum + offcutOf(piece, job), 0n);
  if (!proven) work.caution("There are too many ways of cutting to look at all of them: the best found is given, and leastStockLength tells what none can go below.");
  work.caution("Sawn metal is sharp and throws sparks: wear glasses and gloves.");
  work.caution("Each stock length is taken as it is sold; where its ends are damaged or must be squared, give it that much shorter.");
  return {
    needed: job.stock.map((length) => ({ stock: size(length), pieces: pieces.filter((piece) => piece.stock === length).length })).filter((one) => one.pieces > 0),
    cuts: alike(pieces).map(({ piece, count }) => ({
      pieces: count,
      stock: size(piece.stock),
      lengths: piece.taken.flatMap((times, index) => Array.from({ length: times }, () => size(job.lengths[index] ?? 0n))),
      offcut: size(offcutOf(piece, job)),
    })),
    stockLength: run(used),
    wantedLength: run(net),
    offcuts: run(offcuts),
    sawn: run(used - net - offcuts),
    leastStockLength: run(leastCost(job, job.counts).length),
    proven,
  };
}

/** What is left of a piece; nothing where the last cut falls off its end. */
function offcutOf({ stock, taken }: StockPiece, job: CuttingJob): bigint {
  const left = taken.reduce((rest, times, index) => rest - roomFor(job.lengths[index] ?? 0n, job) * BigInt(times), stock);
  return left > 0n ? left : 0n;
}

/** Pieces cut alike, put together in the order they first come. */
function alike(pieces: readonly StockPiece[]): readonly { readonly piece: StockPiece; readonly count: number }[] {
  const found = new Map<string, { readonly piece: StockPiece; count: number }>();
  for (const piece of pieces) {
    const key = `${String(piece.stock)} ${piece.taken.join()}`;
    const there = found.get(key);
    if (there === undefined) found.set(key, { piece, count: 1 });
    else there.count += 1;
  }
  return [...found.values()];
}

function troublesOf({ wanted, stock }: z.output<ReturnType<typeof cutStockInput>>): readonly Trouble[] {
  const troubles: Trouble[] = [];
  if (wanted.length === 0 || wanted.length > most.wanted) troubles.push(refusal(["wanted"], common("counted", { count: wanted.length, of: "lengths" }), say("lengthsFromOneTo", { most: most.wanted })));
  if (stock.length === 0 || stock.length > most.stock) troubles.push(refusal(["stock"], common("counted", { count: stock.length, of: "lengths" }), say("stockFromOneTo", { most: most.stock })));
  const longest = stock.length === 0 ? undefined : stock.map(exactLength).reduce(max);
  let pieces = 0;
  wanted.forEach(({ length, count }, index) => {
    pieces += count.toNumber();
    if (!count.to().isInteger()) troubles.push(refusal(["wanted", index, "count"], count.toString(), say("giveWhole")));
    if (longest !== undefined && exactLength(length).compare(longest) > 0) troubles.push(refusal(["wanted", index, "length"], length.toString(), say("longerThanStock")));
  });
  if (pieces > most.pieces) troubles.push(refusal(["wanted"], common("counted", { count: pieces, of: "pieces" }), say("mostCut", { most: most.pieces })));
  return troubles;
}
