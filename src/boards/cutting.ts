/** Lengths to be cut, in whole parts of one small length. */
export interface CuttingJob {
  /** Each different length once, the longest first. */
  readonly lengths: readonly bigint[];
  /** How many of each. */
  readonly counts: readonly number[];
  /** Each stock length once, the longest first. */
  readonly stock: readonly bigint[];
  readonly sawCut: bigint;
}

/** One piece of stock: its length, and how many of each length are cut from it. */
export interface StockPiece {
  readonly stock: bigint;
  readonly taken: readonly number[];
}

/** What a way of cutting costs: stock length first, then pieces to handle. */
export interface Cost {
  readonly length: bigint;
  readonly pieces: number;
}

/** What some pieces of stock cost together. */
export function costOf(pieces: readonly StockPiece[]): Cost {
  return { length: pieces.reduce((sum, { stock }) => sum + stock, 0n), pieces: pieces.length };
}

/** Whether the first costs less than the other. */
export function cheaper(one: Cost, other: Cost): boolean {
  return one.length < other.length || (one.length === other.length && one.pieces < other.pieces);
}

/** What a length takes up. The last cut of a piece may fall off its end, so a piece has room for its length and one cut. */
export const roomFor = (length: bigint, { sawCut }: CuttingJob): bigint => length + sawCut;

/** Room that the lengths still to be cut take up. */
export function roomWanted(job: CuttingJob, counts: readonly number[]): bigint {
  return job.lengths.reduce((sum, length, index) => sum + roomFor(length, job) * BigInt(counts[index] ?? 0), 0n);
}

const roundedUp = (number: bigint, to: bigint): bigint => ((number + to - 1n) / to) * to;
const divisorOf = (a: bigint, b: bigint): bigint => (b === 0n ? a : divisorOf(b, a % b));

/** What no way of cutting can go below: every bit of stock filled, in lengths that the stock lengths add up to. */
export function leastCost(job: CuttingJob, counts: readonly number[]): Cost {
  const room = roomWanted(job, counts);
  const { stock, sawCut } = job;
  const longest = stock[0] ?? 1n;
  const step = stock.reduce(divisorOf, 0n);
  // The shortest stock has the most room for its length, since its last cut may fall off the end as well.
  const shortest = stock.at(-1) ?? 1n;
  const length = roundedUp((room * shortest + shortest + sawCut - 1n) / (shortest + sawCut), step);
  return { length, pieces: Number(roundedUp(room, longest + sawCut) / (longest + sawCut)) };
}
