import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { bedMortar } from "../../mortar/bed-mortar.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";
import { waterLines } from "./mixing-water.js";

/** Setting mortar over the whole stone face, and the water for it. */
export function settingBedLines(layer: LayerOf<"setting bed">, bed: Quantity<"length">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { name, backButter, butteredShare } = layer;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "bag", "yield", "waterLow", "waterHigh")];
  if (waste === undefined || pack === undefined) return [];
  const solution = taking.work.attempt(bedMortar, { area: face, bed, backButter, butteredShare, waste, bagYield: pack.yield }, path);
  if (solution === undefined) return [];
  const { net, toOrder, bags } = solution.answers;
  const line = orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.yield, packs: bags, solution });
  return [line, ...waterLines(name, bags, pack, path, taking)];
}
