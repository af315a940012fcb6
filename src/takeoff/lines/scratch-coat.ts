import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { levellingCoat } from "../../mortar/levelling-coat.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";
import { waterLines } from "./mixing-water.js";

/** Mortar of a scratch coat over the walls and into the openings, and the water for it. */
export function scratchCoatLines(layer: LayerOf<"scratch coat">, area: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { name, thickness } = layer;
  const item = taking.item(name, path);
  const [waste, pack] = [taking.waste(item), taking.pack(item, "bag", "yield", "waterLow", "waterHigh")];
  if (waste === undefined || pack === undefined) return [];
  // No dimples of screws are filled here; their size is of no account where there are none.
  const dimples = { overdriven: 0, dimpleWidth: thickness, dimpleDepth: thickness };
  const solution = taking.work.attempt(levellingCoat, { area, thickness, ...dimples, waste, bagYield: pack.yield }, path);
  if (solution === undefined) return [];
  const { coat, toOrder, bags } = solution.answers;
  const line = orderLine({ item, layer: name, net: coat, allowance: waste, allowanceIs: "waste", toOrder, pack: pack.yield, packs: bags, solution });
  return [line, ...waterLines(name, bags, pack, path, taking)];
}
