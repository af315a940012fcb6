import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { isNought, sum } from "../../core/quantity-arithmetic.js";
import { linearOrder } from "../../boards/linear-order.js";
import { refusal } from "../../core/refuse-all.js";
import { backerRodSize } from "../../joints/backer-rod-size.js";
import { sealantOrder } from "../../joints/sealant-order.js";
import type { LayerOf } from "../job.js";
import { noughtOf } from "../measured.js";
import { type OrderLine, orderLine } from "../order-line.js";
import { say } from "../refusals.js";
import type { Taking } from "../taking.js";

/** Sealant of the movement joints, and the rod behind it. */
export function movementJointLines(layer: LayerOf<"movement joints">, path: Path, taking: Taking): readonly OrderLine[] {
  const { measures, work } = taking;
  const { name, width, insideCorners, backerRod } = layer;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "volume")];
  const length = insideCorners ? sum([layer.length, measures.insideCorners, measures.uncladInsideCorners]) : layer.length;
  if (isNought(length)) {
    if (!taking.shared) work.problem(refusal([...path, "length"], say("noMovementJoints"), say("giveTheirLength")));
    return [];
  }
  const rod = backerRod === undefined ? [] : rodLines(backerRod, name, length, width, path, taking);
  const solution = waste && pack && work.attempt(sealantOrder, { length, width, waste, tube: pack.volume }, path);
  if (waste === undefined || pack === undefined || solution === undefined) return rod;
  const { net, toOrder, tubes } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.volume, packs: tubes, solution }), ...rod];
}

function rodLines(name: string, layer: string, length: Quantity<"length">, width: Quantity<"length">, path: Path, taking: Taking): readonly OrderLine[] {
  const { work } = taking;
  const item = taking.item(name, [...path, "backerRod"]);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "length")];
  const size = work.attempt(backerRodSize, { width }, path);
  if (waste === undefined || pack === undefined || size === undefined) return [];
  work.assume(`${name}: rod ${size.answers.rod.toString()} thick, ends butting`);
  const solution = work.attempt(linearOrder, { length, pieceLength: pack.length, lap: noughtOf(pack.length), waste }, path);
  if (solution === undefined) return [];
  const { withWaste, toOrder } = solution.answers;
  return [orderLine({ item, layer, net: length, allowance: waste, allowanceIs: "waste", toOrder: withWaste, pack: pack.length, packs: toOrder, solution })];
}
