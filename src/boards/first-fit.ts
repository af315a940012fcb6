import { cheaper, costOf, type CuttingJob, roomFor, type StockPiece } from "./cutting.js";

/**
 * Cuts by first fit, longest first: each length from the first piece with room for it. Tried with every stock length, each
 * piece then exchanged for the shortest stock that holds it; the cheapest is kept.
 */
export function firstFit(job: CuttingJob): readonly StockPiece[] {
  const usable = job.stock.filter((stock) => stock >= (job.lengths[0] ?? 0n));
  const ways = usable.map((stock) => fittedInto(stock, job).map(({ taken, room }) => ({ stock: shortestFor(stock + job.sawCut - room, job), taken })));
  return ways.reduce((best, way) => (cheaper(costOf(way), costOf(best)) ? way : best));
}

function fittedInto(stock: bigint, job: CuttingJob): readonly { readonly taken: readonly number[]; readonly room: bigint }[] {
  const pieces: { readonly taken: number[]; room: bigint }[] = [];
  job.lengths.forEach((length, index) => {
    const wanted = roomFor(length, job);
    for (let left = job.counts[index] ?? 0; left > 0; left -= 1) {
      let piece = pieces.find(({ room }) => room >= wanted);
      if (piece === undefined) {
        piece = { taken: job.lengths.map(() => 0), room: stock + job.sawCut };
        pieces.push(piece);
      }
      piece.taken[index] = (piece.taken[index] ?? 0) + 1;
      piece.room -= wanted;
    }
  });
  return pieces;
}

/** The shortest stock with this much room. */
function shortestFor(room: bigint, { stock, sawCut }: CuttingJob): bigint {
  return stock.filter((one) => one + sawCut >= room).at(-1) ?? (stock[0] as bigint);
}
