import type { Path } from "../../core/problems.js";
import type { Quantity } from "../../core/quantity.js";
import { boardCount } from "../../boards/board-count.js";
import type { LayerOf } from "../job.js";
import { type OrderLine, orderLine } from "../order-line.js";
import type { Taking } from "../taking.js";
import { fastenerLines } from "./fasteners-by-area.js";

/** Foam boards by area, and their fasteners. */
export function foamBoardLines(layer: LayerOf<"foam board">, face: Quantity<"area">, path: Path, taking: Taking): readonly OrderLine[] {
  const { name, boardWidth, boardHeight, fastenersPerArea } = layer;
  const item = taking.item(name, path);
  const waste = taking.waste(item);
  const fasteners = fastenerLines(name, face, fastenersPerArea, path, taking);
  const solution = waste && taking.work.attempt(boardCount, { area: face, boardWidth, boardHeight, waste }, path);
  if (waste === undefined || solution === undefined) return fasteners;
  const { net, toOrder } = solution.answers;
  return [orderLine({ item, layer: name, net, allowance: waste, allowanceIs: "waste", toOrder, packs: toOrder, solution }), ...fasteners];
}
