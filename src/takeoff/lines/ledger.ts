import type { Path } from "../../core/problems.js";
import { linearOrder } from "../../boards/linear-order.js";
import type { LayerOf } from "../job.js";
import { noughtOf } from "../measured.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";

/** The ledger along the foot of the walls, openings that reach it out. */
export function ledgerLines({ name, lap }: LayerOf<"ledger">, path: Path, taking: Taking): readonly OrderLine[] {
  const { job, measures, work } = taking;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  if (lap === undefined) work.assume(`${name}: pieces butt, without a lap`);
  if (job.elevations.some(({ openings }) => openings.some(({ toBase }) => toBase === undefined))) {
    work.assume(`${name}: openings of which toBase is not said stand above the foot of the wall`);
  }
  if (waste === undefined || pack === undefined) return [];
  const solution = work.attempt(linearOrder, { length: measures.base, pieceLength: pack.length, lap: lap ?? noughtOf(pack.length), waste }, path);
  if (solution === undefined) return [];
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net: measures.base, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: toOrder, solution })];
}
