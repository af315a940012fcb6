import type { Path } from "../../core/problems.js";
import { isNought } from "../../core/quantity-arithmetic.js";
import { refusal } from "../../core/refuse-all.js";
import { linearOrder } from "../../boards/linear-order.js";
import { footLength } from "../foot-length.js";
import type { LayerOf } from "../job.js";
import { noughtOf } from "../measured.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** The ledger along the foot of the walls, openings that reach it out. */
export function ledgerLines({ name, lap }: LayerOf<"ledger">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  if (lap === undefined) work.assume(`${name}: pieces butt, without a lap`);
  const length = footLength(name, taking);
  if (isNought(length) && !taking.shared) work.problem(refusal(path, length.toString(), say("noFootLeft")));
  if (waste === undefined || pack === undefined || isNought(length)) return [];
  const solution = work.attempt(linearOrder, { length, pieceLength: pack.length, lap: lap ?? noughtOf(pack.length), waste }, path);
  if (solution === undefined) return [];
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net: length, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: toOrder, solution })];
}
