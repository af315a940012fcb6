import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import type { LayerOf } from "../job.js";
import { lathSheets } from "../lath-sheets.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";
import { fastenerLines } from "./fasteners-by-area.js";

/** Sheets of lath over the walls and into the openings, and their fasteners. */
export function lathLines(layer: LayerOf<"lath">, area: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { name, sheetWidth, sheetLength, sideLap, endLap, fastenersPerArea } = layer;
  const item = taking.item(name, path);
  const waste = taking.waste(item);
  const fasteners = fastenerLines(name, area, fastenersPerArea, path, taking);
  const solution = waste && taking.work.attempt(lathSheets, { area, sheetWidth, sheetLength, sideLap, endLap, waste }, path);
  if (waste === undefined || solution === undefined) return fasteners;
  const { net, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, packs: toOrder, solution }), ...fasteners];
}
