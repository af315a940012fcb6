import { cheaper, type Cost, costOf, type CuttingJob, leastCost, roomFor, type StockPiece } from "./cutting.js";
import { firstFit } from "./first-fit.js";

/** A way of cutting, and whether none can be cheaper. */
export interface Cutting {
  readonly pieces: readonly StockPiece[];
  readonly proven: boolean;
}

/** Beyond so many steps the search is given up, and the best way so far is kept. */
const mostSteps = 100_000;

/**
 * The cheapest way of cutting: first fit, bettered by a search through every way of filling one piece after the other. The
 * search skips what cannot become cheaper than the best so far, so that it ends at once where first fit is the best.
 */
export function bestCutting(job: CuttingJob): Cutting {
  let best = firstFit(job);
  let steps = 0;
  const spent = (): boolean => (steps += 1) > mostSteps;
  const reached = new Map<string, Cost>();
  const search = (counts: readonly number[], done: readonly StockPiece[], cost: Cost): void => {
    const first = counts.findIndex((count) => count > 0);
    if (first < 0) {
      if (cheaper(cost, costOf(best))) best = done;
      return;
    }
    const least = leastCost(job, counts);
    if (!cheaper({ length: cost.length + least.length, pieces: cost.pieces + least.pieces }, costOf(best))) return;
    const before = reached.get(counts.join());
    if (before !== undefined && !cheaper(cost, before)) return;
    reached.set(counts.join(), cost);
    for (const stock of job.stock) {
      for (const taken of fillings(job, counts, first, stock, spent)) {
        const left = counts.map((count, index) => count - (taken[index] ?? 0));
        search(left, [...done, { stock, taken }], { length: cost.length + stock, pieces: cost.pieces + 1 });
      }
    }
  };
  search(job.counts, [], { length: 0n, pieces: 0 });
  return { pieces: best, proven: steps <= mostSteps };
}

/**
 * Every way to fill a piece of stock that takes one of the length `first` and leaves no room for another length that is
 * still wanted: a piece with room to spare is never better. The fullest of long lengths come first.
 */
function* fillings(job: CuttingJob, counts: readonly number[], first: number, stock: bigint, spent: () => boolean): Generator<readonly number[]> {
  const rooms = job.lengths.map((length) => roomFor(length, job));
  const fill = function* (index: number, taken: readonly number[], room: bigint): Generator<readonly number[]> {
    if (spent()) return;
    const wanted = rooms[index];
    if (wanted === undefined) {
      if (!rooms.some((one, at) => (counts[at] ?? 0) > (taken[at] ?? 0) && one <= room)) yield taken;
      return;
    }
    for (let count = Math.min(counts[index] ?? 0, Number(room / wanted)); count >= (index === first ? 1 : 0); count -= 1) {
      yield* fill(index + 1, [...taken, count], room - wanted * BigInt(count));
    }
  };
  if ((rooms[first] ?? 0n) <= stock + job.sawCut) yield* fill(0, [], stock + job.sawCut);
}
